import { NO_BOW } from '@/domain/call/bow'
import type { Bow } from '@/domain/call/bow'
import { DEMO_PARTS } from '@/demo/demo-parts'
import type { Plan } from '@/domain/sheet/plan'
import { NEW_PLAN } from '@/domain/sheet/plan'
import type { Sheet } from '@/domain/sheet/sheet'
import { DEFAULT_RULES } from '@/domain/shop/rules'
import { testId } from './test-id'

export const USUAL_LINES = [
  'Heron 200',
  'Long post 158',
  'Ring 15',
  'Two-blade 250',
  'Clip 11',
  'Vane glue',
  'Slow epoxy',
]

/** A sheet of demo parts, by name; four broad vanes besides. */
export function demoSheet(plan: Partial<Plan>, names: readonly string[] = USUAL_LINES, bow: Partial<Bow> = {}): Sheet {
  const parts = DEMO_PARTS.map((part, i) => ({ id: testId(i + 1), part }))
  const called = (name: string) => {
    const found = parts.find(({ part }) => part.name === name)
    if (found === undefined) throw new Error(`no demo part is called ${name}`)
    return found
  }
  const lines = [...names, 'Broad vane 2.6'].map((name, i) => ({
    id: testId(1000 + i),
    part: called(name).id,
    lot: null,
    count: name === 'Broad vane 2.6' ? 4 : 1,
  }))
  return {
    job: testId(9000),
    jobCode: 'TEST-1-0',
    version: 1,
    client: null,
    hunt: {},
    bow: { ...NO_BOW, peakDrawWeightLb: 72, drawLengthIn: 28.5, ...bow },
    plan: { ...NEW_PLAN, ...plan, lines },
    parts: parts.filter(({ id }) => lines.some((line) => line.part === id)),
    lots: [],
    learned: [],
    rules: DEFAULT_RULES,
    route: DEFAULT_RULES.route,
    formulas: 'core/1',
  }
}
