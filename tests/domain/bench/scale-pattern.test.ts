// Line formats invented here; no maker's protocol is followed.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { patternProblem, patternReader } from '@/domain/bench/scale-pattern'

const P = { line: '[{state}] {any} = {weight} {unit};', settled: 'OK', grains: 'grn' }

describe('a pattern of the shop’s own', () => {
  const read = patternReader(P)

  it.each([
    ['[OK] W1 = 826.4 grn;', { kind: 'weight', value: 826.4, digits: '826.4', unit: 'gr', stable: true }],
    ['[ok]  W1=  826,4 GRN ;', { kind: 'weight', value: 826.4, digits: '826,4', unit: 'gr', stable: true }],
    ['[OK] W1 = - 12.0 grn;', { kind: 'weight', value: -12, digits: '-12.0', unit: 'gr', stable: true }],
    ['[..] W1 = 826.4 grn;', { kind: 'weight', value: 826.4, unit: 'gr', stable: false }],
    ['[OK] W1 = 53.55 gram;', { kind: 'weight', value: 53.55, unit: 'other', stable: true }],
  ])('reads %j', (line, told) => {
    expect(read(line)).toMatchObject(told)
  })

  it.each([
    '',
    '826.4 grn',
    '[OK] W1 = 8x6.4 grn;',
    '[OK] W1 = 826.4',
    '[OK] W1 = 826.4 grn; and more',
    '9'.repeat(300),
  ])('takes %j for noise', (line) => {
    expect(read(line).kind).toBe('noise')
  })

  it('says nothing of unit or state where its line sends none', () => {
    const told = patternReader({ line: 'N{weight}', settled: '', grains: '' })('N 826.4')
    expect(told).toMatchObject({ kind: 'weight', value: 826.4 })
    expect(told).not.toHaveProperty('unit')
    expect(told).not.toHaveProperty('stable')
  })

  it('calls settled what sends nothing in the place of the state, where the shop said so', () => {
    const reader = patternReader({ line: '{weight}{state} {unit}', settled: '', grains: 'GN' })
    expect(reader('826.4 GN')).toMatchObject({ value: 826.4, stable: true, unit: 'gr' })
    expect(reader('826.4? GN')).toMatchObject({ value: 826.4, stable: false, unit: 'gr' })
  })

  it.each([
    [{ ...P, line: '{state} {unit}' }, 'no weight'],
    [{ ...P, line: '{weight} {weight}' }, 'twice'],
    [{ ...P, line: '{weight} {mass}' }, 'unknown place'],
    [{ ...P, line: `{weight}${'-'.repeat(60)}` }, 'too long'],
    [{ ...P, line: '{weight}{any}{any}{any}{any}{any}' }, 'too long'],
    [{ ...P, grains: ' ' }, 'no grains word'],
    [P, undefined],
  ] as const)('%j has the problem %j', (pattern, problem) => {
    expect(patternProblem(pattern)).toBe(problem)
  })

  it('takes whatever else stands in it as it is, and any line for a weight or for noise, quickly', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 50 }), fc.string({ maxLength: 80 }), (between, line) => {
        const pattern = { line: `${between.replaceAll(/[{}]/g, '')}{weight}`, settled: '', grains: '' }
        if (patternProblem(pattern) !== undefined) return
        const reader = patternReader(pattern)
        expect(['weight', 'noise']).toContain(reader(line).kind)
        const own = `${between.replaceAll(/[{}]/g, '')}826.4`
        if (own.length <= 60 && !/[\d+-]\s*$/.test(between)) expect(reader(own)).toMatchObject({ value: 826.4 })
      }),
    )
  })
})
