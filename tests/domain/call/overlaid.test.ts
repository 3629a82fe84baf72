import { expect, it } from 'vitest'
import { askedNumber } from '@/domain/call/asked-numbers'
import { overlaid } from '@/domain/call/overlaid'
import { QUESTIONS, questionOf } from '@/domain/call/questions'
import { parseQuantity } from '@/domain/entry/parse-quantity'
import { told } from './told-call'

it('lays what is being typed over what was saved, and takes out what was emptied', () => {
  const saved = told({ peakDrawWeightLb: 70, drawLengthIn: 29, braceHeightIn: 7 })
  const laid = overlaid(saved, { peakDrawWeightLb: 72, drawLengthIn: null })
  expect(laid.peakDrawWeightLb).toMatchObject({ value: 72 })
  expect(laid.drawLengthIn).toBeUndefined()
  expect(laid.braceHeightIn).toBe(saved.braceHeightIn)
  expect(overlaid(saved, {})).toBe(saved)
})

it('takes a spine as it is said, and refuses an absurd number of every question', () => {
  const spine = askedNumber({ ...questionOf('presentSpineIn'), id: 'presentSpineIn' })!
  expect(parseQuantity('340', spine)).toMatchObject({ kind: 'number', value: 0.34 })
  for (const question of QUESTIONS) {
    const asked = askedNumber(question)
    if (asked === undefined) continue
    for (const absurd of ['-99999', '1e9', 'NaN', '∞', '999999999'])
      expect(parseQuantity(absurd, asked).kind).toBe('problem')
  }
})

it('takes a let-off in percent, and no share of one that was meant as a percentage', () => {
  const asked = askedNumber({ ...questionOf('letOffPercent'), id: 'letOffPercent' })!
  for (const said of ['80', '85 %', '10', '99']) expect(parseQuantity(said, asked).kind).toBe('number')
  for (const said of ['0.8', '0.85', '9', '100']) expect(parseQuantity(said, asked).kind).toBe('problem')
})
