import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { anyNumber, expectHonest } from '@tests/support/honest'
import { ALL_EXAMPLES } from './all'
import { derivationOf, filesOf, TOPICS } from './page'
import { rangesOf } from './ranges'
import type { Take } from './worked-example'

const MODELS = TOPICS.flatMap((topic) =>
  Object.entries(ALL_EXAMPLES[topic]).map(([model, work]) => ({ topic, model, work })),
)
const usual: Take = (n) => n

describe('the worked examples', () => {
  it('leave no model of the core out', () => {
    const answering = TOPICS.flatMap(filesOf).flatMap(({ text }) =>
      text
        .split('\nexport function ')
        .slice(1)
        .filter((body) => /\): (\w+)/.exec(body)?.[1] === 'Outcome')
        .map((body) => /^\w+/.exec(body)![0]),
    )
    expect(answering.length).toBeGreaterThan(60)
    expect(MODELS.map(({ model }) => model).toSorted()).toEqual(answering.toSorted())
  })

  it.each(MODELS)('of $topic: $model answers, with numbers, units and a source', ({ work }) => {
    const { equation, inputs, result, source } = derivationOf(work(usual))
    expect(equation).not.toBe('')
    expect(inputs.length).toBeGreaterThan(0)
    expect([...inputs, ...result].filter(({ name, value }) => name === '' || !Number.isFinite(value))).toEqual([])
    expect(source.length).toBeGreaterThan(0)
  })

  it.each(MODELS)('of $topic: $model says where it holds when a number is none', ({ work }) => {
    expect(rangesOf(work).filter(({ from, to }) => !(from < to))).toEqual([])
    expect(rangesOf(work).length).toBeGreaterThan(0)
  })
})

/** Runs for each model; with about seventy of them some 100,000 calls in all. */
const RUNS = 1500

describe('with a few numbers wild, finite numbers or findings come out', () => {
  const wild = fc.array(fc.tuple(fc.nat({ max: 40 }), anyNumber), { minLength: 1, maxLength: 4 })

  it('is tried a hundred thousand times', () => {
    expect(MODELS.length * RUNS).toBeGreaterThanOrEqual(100_000)
  })

  it.each(MODELS)('of $model', { timeout: 60_000 }, ({ work }) => {
    fc.assert(
      fc.property(wild, (changes) => {
        const changed = new Map(changes)
        let call = 0
        const outcome = work((n) => {
          const other = changed.get(call++)
          return other === undefined ? n : other
        })
        expectHonest(outcome)
      }),
      { numRuns: RUNS },
    )
  })
})
