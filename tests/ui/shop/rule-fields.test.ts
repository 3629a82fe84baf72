import { describe, expect, it } from 'vitest'
import type { Rules } from '@/domain/shop/rules'
import { DEFAULT_RULES, USUAL_CLAMP_IN, rules as schema } from '@/domain/shop/rules'
import { RULE_FIELDS } from '@/ui/shop/rule-fields'

/** Lists have panels of their own, and so do the passes at the grinder. */
const APART = new Set(['scales', 'quarry', 'places', 'route', 'builders', 'jigs', 'passes'])

/** Every number of the rules by its path. */
function numbers(value: unknown, path: readonly string[] = []): readonly [string, number][] {
  if (typeof value === 'number') return [[path.join('.'), value]]
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, each]) =>
    path.length === 0 && APART.has(key) ? [] : numbers(each, [...path, key]),
  )
}
const FIELDS = RULE_FIELDS.flatMap(({ fields }) => fields)
/** A value inside the field's bounds and other than the one it has. */
function another(field: (typeof FIELDS)[number], rules: Rules): number {
  const { min, max, whole } = field.asked(rules)
  const had = field.read(rules)!
  const middle = (min + max) / 2
  const value = middle === had ? (had + max) / 2 : middle
  return whole === true ? Math.round(value) : value
}

describe('the rules of the shop', () => {
  it('can each be changed in one field that changes nothing else and says where it acts', () => {
    const changed = FIELDS.map((field) => {
      const value = another(field, DEFAULT_RULES)
      const after = { ...DEFAULT_RULES, ...field.put(DEFAULT_RULES, value) }
      expect(schema.safeParse(after).success, field.label).toBe(true)
      expect(field.read(after), field.label).toBeCloseTo(value, 2)
      expect(field.hint.length, field.label).toBeGreaterThan(3)
      const before = new Map(numbers(DEFAULT_RULES))
      const paths = numbers(after).flatMap(([path, number]) => (before.get(path) === number ? [] : [path]))
      expect(paths, field.label).toHaveLength(1)
      return paths[0]
    })
    // The clamp stands in no old rules; what is usual stands in for it.
    const all = numbers({ ...DEFAULT_RULES, clampIn: USUAL_CLAMP_IN }).map(([path]) => path)
    expect(new Set(changed)).toEqual(new Set(all))
    expect(changed).toHaveLength(all.length)
    expect(new Set(FIELDS.map(({ label }) => label)).size).toBe(FIELDS.length)
  })

  it('keep the least of a pair under the most', () => {
    const least = FIELDS.find(({ label }) => label === 'Longbow, at least')!
    const most = FIELDS.find(({ label }) => label === 'Longbow, at most')!
    const { max, min } = DEFAULT_RULES.reserve.longbow
    expect(least.asked(DEFAULT_RULES).max).toBe(max)
    expect(most.asked(DEFAULT_RULES).min).toBe(min)
  })

  it('do without the days of a rush when the field is emptied', () => {
    const rush = FIELDS.find(({ label }) => label === 'Bench days of a rush')!
    expect(rush.clear!(DEFAULT_RULES)).not.toHaveProperty('rushBenchDays')
  })
})
