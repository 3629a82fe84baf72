/** What the Shop and Parts pages do: each one command, true once it is on the disk. */
import type { Rules } from '../domain/shop/rules'
import { RULES_SUBJECT } from '../domain/shop/rules-subject'
import { newFact } from '../domain/records/write'
import type { Part } from '../domain/stock/part'
import type { Standing } from '../domain/stock/shelf'
import type { AppState } from './app-store'

type Write = Pick<AppState, 'write'>

/** A new version of the rules; sheets that are frozen keep the ones they stand on. */
export const changeRules = ({ write, shelf }: Write & Pick<AppState, 'shelf'>, rules: Rules) =>
  write((said) => ({
    facts: [newFact(said, 'rules', RULES_SUBJECT, rules, { parents: [...shelf.rulesHeads] })],
  }))

export const addPart = ({ write }: Write, part: Part) =>
  write((said, ids) => ({ facts: [newFact(said, 'part', ids.id(), part)] }))

export const changePart = ({ write }: Write, before: Standing<Part>, part: Part, reason: string) =>
  write((said) => ({
    facts: [newFact(said, 'part', before.id, part, { parents: [before.hash, ...before.rivals], reason })],
  }))
