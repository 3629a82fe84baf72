/** One job of the archive: what was agreed, each frozen sheet with its figures, each build with every reading. */
import type { Estimate, Outcome } from '../../core/outcome'
import type { Dimension, Quantity, UnitOf } from '../../core/quantity'
import type { ArrowBuilt } from '../../domain/bench/built'
import { DATA_POINTS } from '../../domain/bench/data-points'
import { questionsAsked } from '../../domain/call/asked'
import { TOPICS } from '../../domain/call/questions'
import { codeOf } from '../../domain/records/code'
import { lineWeights } from '../../domain/sheet/line-weights'
import type { Sheet } from '../../domain/sheet/sheet'
import { sheetFigures } from '../../domain/sheet/sheet-figures'
import type { ArchivedBuild, ArchivedJob } from '../../state/archive-jobs'
import { pointWord, stepWords } from '../words/bench-words'
import { readBackSentence } from '../words/call/read-back-words'
import { showDayAndYear, showMoment } from '../words/dates'
import { show, showBand, showNumber } from '../words/format'
import { jobTitle } from '../words/job-words'
import { partKindWord } from '../words/part-kind-words'
import { repairRecordWords } from '../words/afterwards-words'
import { escaped, list, table, tag } from './html'

type Shown<D extends Dimension> = Outcome<Quantity<D> | Estimate<Quantity<D>>> | undefined

/** A value, with its band where it has one; nothing where the core gives no answer. */
function figure<D extends Dimension>(name: string, of: Shown<D>, unit: UnitOf<D>, decimals: number): string[][] {
  if (of?.ok !== true) return []
  const { value } = of
  if (typeof value === 'number') return [[name, show(value, unit, decimals)]]
  return [[name, `${show(value.value, unit, decimals)}, ${showBand(value, unit, decimals)}`]]
}

function sheetText(sheet: Sheet): string {
  const worked = sheetFigures(sheet)
  const weights = worked === undefined ? undefined : lineWeights(worked.items)
  const lines = sheet.plan.lines.map((line) => {
    const part = sheet.parts.find(({ id }) => id === line.part)?.part
    const lot = sheet.lots.find(({ id }) => id === line.lot)?.lot
    const weight = weights?.get(line.id)
    return [
      part === undefined ? '' : partKindWord(part.kind),
      `${line.count > 1 ? `${line.count} × ` : ''}${part?.name ?? ''}`,
      lot?.code ?? 'lot unknown',
      weight === undefined ? '' : show(weight.value, 'gr', 1),
    ]
  })
  const { figures } = worked ?? {}
  const rows = [
    ...figure('Finished', figures?.finished, 'gr', 1),
    ...figure('FOC', figures?.foc, '%', 1),
    ...figure('Column reserve', figures?.columnReserve, '1', 2),
    ...figure('Speed', figures?.speed, 'ft/s', 1),
    ...figure('Kinetic energy', figures?.kineticEnergy, 'ft·lbf', 1),
    ...figure('Momentum', figures?.momentum, 'slug·ft/s', 3),
  ]
  const { plan } = sheet
  const made = `${plan.quantity} arrows, C2C ${plan.c2cIn ?? 'open'} in, fletch ${plan.fletchSide} ${plan.fletchDegrees}°, tail ${plan.vaneTailIn} in from the throat, cock vane ${plan.cockVaneDeg}°, head indexed to: ${plan.indexPlane}, jig ${plan.jig === '' ? 'not named' : plan.jig}.`
  return (
    tag('p', made) +
    table('The arrow, line by line', ['Part', 'Which', 'Lot', 'Weight'], lines) +
    table('Its figures', ['Figure', 'Value'], rows)
  )
}

function arrowText({ no, code, outcome, cause, readings, deviations, repairs = [] }: ArrowBuilt): string {
  const rows = readings.map(({ reading, by, withdrawn }) => [
    pointWord(reading.point),
    `${showNumber(reading.value, DATA_POINTS[reading.point].decimals)} ${reading.unit}`,
    `${by}, ${showMoment(reading.takenAt, 'UTC')} UTC`,
    reading.source,
    withdrawn === null ? '' : `withdrawn by ${withdrawn.by}: ${withdrawn.reason}`,
  ])
  const stands = cause === undefined ? outcome : `${outcome}: ${cause}`
  return (
    tag('h4', `No. ${no}, ${code}, ${stands}`) +
    table(`Every reading of no. ${no}`, ['Data point', 'Read', 'By, when', 'How', ''], rows) +
    list(
      deviations.map(
        (each) =>
          `${stepWords(each.step).title}: required ${each.required}, found ${each.found}; ${
            each.decision === null
              ? 'not decided'
              : `${each.decision.disposition}, ${each.decision.decidedBy}: ${each.decision.reason}`
          }`,
      ),
    ) +
    list(repairs.map((repair) => repairRecordWords(repair, 'UTC')))
  )
}

function buildText({ hash, body, arrows }: ArchivedBuild): string {
  const { started, scrapped, accepted } = body.counts
  return (
    tag('h3', `As built ${body.version}, record ${codeOf(hash)}`) +
    tag(
      'p',
      `Started ${started}, scrapped ${scrapped}, accepted ${accepted}. Signed off by ${body.signedOffBy}. Hash ${hash}.`,
    ) +
    arrows.map(arrowText).join('')
  )
}

export const anchorOf = (code: string): string => `job-${code}`

export function jobInArchive({ open, builds }: ArchivedJob): string {
  const { job, sheets, client } = open
  const told = TOPICS.flatMap((topic) =>
    questionsAsked(job.answers, topic).flatMap(({ id }) => {
      const answer = job.answers[id]
      return answer !== undefined && 'value' in answer ? [readBackSentence(id, answer.value)] : []
    }),
  )
  const frozen = job.frozen.flatMap(({ sheet, version, at, by }) => {
    const body = sheets.get(sheet)
    if (body === undefined) return []
    const head = `Sheet, version ${version}, frozen ${showDayAndYear(at.slice(0, 10))} by ${by}, record ${codeOf(sheet)}`
    return [tag('h3', head) + sheetText(body)]
  })
  const after = job.afterwards.flatMap(({ what, arrow, at, body }) => {
    const no = job.bench?.arrows.find(({ id }) => id === arrow)?.no
    const who = `${no === undefined ? '' : `No. ${no}, `}${showDayAndYear(at.slice(0, 10))}`
    if (what === 'retired' && 'cause' in body) return [`${who}: retired, ${body.cause}`]
    return what === 'repaired' && 'what' in body ? [`${who}: ${body.what}, ${body.reason}`] : []
  })
  return (
    `<section id="${escaped(anchorOf(job.code))}">` +
    tag('h2', jobTitle(job, client?.['name'])) +
    list(told) +
    frozen.join('') +
    builds.map(buildText).join('') +
    list(after) +
    '</section>\n'
  )
}
