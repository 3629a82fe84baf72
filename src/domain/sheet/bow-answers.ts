/** A sheet's bow as the answers it was told in, so that sheet and call read one bow the same way. */
import type { Answers, KeptAnswer } from '../call/answers'
import type { Bow } from '../call/bow'
import type { AnswerValue } from '../call/answer'

const kept = (value: AnswerValue): KeptAnswer => ({ value, how: 'told', by: '', at: '' })

export function bowAnswers(bow: Bow): Answers {
  const { kind, chronograph, forceDraw, name: _, ...rest } = bow
  return {
    ...Object.fromEntries(Object.entries(rest).map(([question, value]) => [question, kept(value)])),
    bowKind: kept(kind),
    chronograph: kept(chronograph.map(({ arrowGr, speedFps }) => [arrowGr, speedFps])),
    forceDraw: kept(forceDraw.map(({ drawIn, forceLb }) => [drawIn, forceLb])),
  }
}
