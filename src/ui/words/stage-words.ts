/** How each stage of a job stands, in a word or two. */
import { topicStates } from '../../domain/call/open-questions'
import type { Job } from '../../domain/job/job'
import type { Stage } from '../../domain/job/stage'
import { showDay, showDayAndYear } from './dates'
import { counted, showNumber } from './format'
import { STAGE_WORDS } from './job-words'

export interface StageTask {
  readonly stage: Stage
  readonly title: string
  readonly state: string
  readonly note: string
  readonly open: boolean
}

export const stageTasks = (job: Job): readonly StageTask[] => [
  callTask(job),
  sheetTask(job),
  benchTask(job),
  sendTask(job),
]

function callTask({ answers, accepted }: Job): StageTask {
  const states = topicStates(answers)
  const answered = states.reduce((total, each) => total + each.answered, 0)
  const open = states.reduce((total, each) => total + each.open, 0)
  return {
    stage: 'call',
    title: STAGE_WORDS.call,
    state: accepted === null ? 'under way' : `agreed ${showDay(accepted.at.slice(0, 10))}`,
    note: [counted(answered, 'answer'), ...(open > 0 ? [`${open} open`] : [])].join(', '),
    open: accepted === null,
  }
}

function sheetTask({ plan, frozen }: Job): StageTask {
  const last = frozen.at(-1)
  const target = plan.targetGr === undefined ? 'no target yet' : `to ${showNumber(plan.targetGr, 1)} gr`
  return {
    stage: 'sheet',
    title: STAGE_WORDS.sheet,
    state:
      last === undefined ? (plan.lines.length === 0 ? 'not begun' : 'being planned') : `version ${last.version} frozen`,
    note: `${target}, ${counted(plan.quantity, 'arrow')}${plan.spares > 0 ? ` and ${counted(plan.spares, 'spare')}` : ''}`,
    open: last === undefined && plan.lines.length > 0,
  }
}

function benchTask({ bench, frozen, signedOff }: Job): StageTask {
  const building = bench?.arrows.filter(({ state }) => state === 'building').length ?? 0
  return {
    stage: 'bench',
    title: STAGE_WORDS.bench,
    state:
      bench === null
        ? frozen.length === 0
          ? 'waits for a frozen sheet'
          : 'ready'
        : signedOff.length > 0
          ? 'done'
          : 'under way',
    note: bench === null ? '' : counted(building, 'arrow'),
    open: bench !== null && signedOff.length === 0,
  }
}

function sendTask({ sent, signedOff }: Job): StageTask {
  const last = sent.at(-1)
  const signed = signedOff.at(-1)
  return {
    stage: 'send',
    title: STAGE_WORDS.send,
    state:
      last !== undefined
        ? `sent ${showDayAndYear(last.on)}`
        : signed !== undefined
          ? 'signed off, to be sent'
          : 'waits for the bench',
    note: '',
    open: signed !== undefined && last === undefined,
  }
}
