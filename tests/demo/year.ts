/** A shop's year at the bench, built by the simulated builder: what every arrow came to, and what the coach said of it. */
import { inGrains } from '@/core/quantity'
import { dice } from '@/demo/dice'
import type { Habits } from '@/demo/simulated-build'
import { simulatedBuild } from '@/demo/simulated-build'
import { truth } from '@/demo/true-set'
import { building } from '@/domain/bench/bench'
import type { BenchArrow } from '@/domain/bench/bench'
import type { DataPoint } from '@/domain/bench/data-points'
import { glueAdvice } from '@/domain/bench/glue-advice'
import { setLanding } from '@/domain/bench/set-forecast'
import { newEvent, newFact } from '@/domain/records/write'
import { sheetFigures } from '@/domain/sheet/sheet-figures'
import type { Sheet } from '@/domain/sheet/sheet'
import { demoSheet } from '@tests/support/demo-sheet'
import { inMemoryJob, opened } from '@tests/support/in-memory-job'
import { testId } from '@tests/support/test-id'

const JOB = testId(9000)
const REAR = ['Clip 11', 'Vane glue', 'Slow epoxy']

/** What the shop builds, from six hundred and fifty grains to a thousand: shaft, post, ring and head. */
const BUILDS: readonly (readonly string[])[] = [
  ['Heron 260', 'Long post 125', 'Ring 15', 'Two-blade 200'],
  ['Heron 200', 'Long post 158', 'Ring 15', 'Two-blade 250'],
  ['Heron 200', 'Long post 158', 'Ring 42', 'Two-blade 250'],
  ['Heron 175', 'Long post 210', 'Ring 28', 'Two-blade 300'],
]

export interface YearArrow {
  readonly code: string
  /** Finished by the scale, less its own target, gr. */
  readonly off: number
  /** The same without the scale's error. */
  readonly trueOff: number
  /** Front glue as it was first spread, gr. */
  readonly spread: number
  readonly passes: number
  readonly wetWeighings: number
  /** The scale had wandered at the final inspection: it was checked, and the arrow weighed again. */
  readonly isWeighedAgain: boolean
  /** The coach said at the bond that no joint of the shop's brings it onto its number. */
  readonly isQuestioned: boolean
  /** Its finished weight stands as a deviation on the record. */
  readonly isNamed: boolean
}

/** A target six to nine grains under what its parts are expected to come to [CP]; sets of three to twelve. */
function plannedSheet(set: number): Sheet {
  const plan = { c2cIn: 28, quantity: 3 + ((set * 7) % 10) }
  const names = [...BUILDS[set % BUILDS.length]!, ...REAR]
  const finished = sheetFigures(demoSheet(plan, names))?.figures?.finished
  if (finished?.ok !== true) throw new Error('the plan has no finished weight')
  return demoSheet({ ...plan, targetGr: Math.round(inGrains(finished.value) - 6 - (set % 4)) }, names)
}

const times = ({ readings }: BenchArrow, point: DataPoint) =>
  readings.filter(({ reading }) => reading.point === point).length

async function oneSet(set: number, habits: Habits): Promise<readonly YearArrow[]> {
  const sheet = plannedSheet(set)
  const fact = newFact({ by: 'Ilse', at: '2026-01-01T00:00:00.000Z' }, 'sheet', JOB, sheet)
  const arrows = Array.from({ length: sheet.plan.quantity }, (_, i) => ({
    id: testId(20_000 + i),
    no: i + 1,
    code: `${set + 1}/${i + 1}`,
  }))
  const { perform, id, begun } = inMemoryJob([
    opened(JOB),
    newEvent('frozen', { job: JOB }, { sheet: fact.hash, version: 1 }),
    newEvent('setStarted', { job: JOB }, { sheet: fact.hash, arrows }),
  ])
  const { job, truths, weighedAgain } = await simulatedBuild(
    await begun,
    sheet,
    dice(1000 + set),
    { perform, id },
    habits,
  )
  const worked = sheetFigures(sheet)!
  const landing = setLanding(job.bench!, sheet, worked.items)
  return building(job.bench!).map((arrow) => {
    const own = landing.arrows.get(arrow.id)!
    const advice = glueAdvice(own, worked, sheet)
    if (advice?.advice.ok !== true) throw new Error(`no advice for ${arrow.code}`)
    const real = truths.get(arrow.id)!
    const finished = truth('finishedWeight', real, worked.items, sheet)
    return {
      code: arrow.code,
      off: inGrains(own.over),
      trueOff: finished - inGrains(own.target),
      spread: finished - real.touchedGr - truth('edgeWeight', real, worked.items, sheet),
      passes: times(arrow, 'trimWeight'),
      isWeighedAgain: weighedAgain.has(arrow.id),
      wetWeighings: times(arrow, 'bondWeight'),
      isQuestioned: advice.advice.value.next === 'question',
      isNamed: job.bench!.deviations.some((each) => each.arrow === arrow.id && each.point === 'finishedWeight'),
    }
  })
}

export async function year(sets: number, habits: Habits = {}): Promise<readonly YearArrow[]> {
  const built: YearArrow[] = []
  for (let set = 0; set < sets; set++) built.push(...(await oneSet(set, habits)))
  return built
}
