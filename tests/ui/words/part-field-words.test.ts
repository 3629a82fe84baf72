import { expect, it } from 'vitest'
import { PART_FIELDS } from '@/domain/stock/part-fields'
import { partFieldHint, partFieldWord } from '@/ui/words/part-field-words'

const FIELDS = [...new Set(Object.values(PART_FIELDS).flatMap((fields) => fields.map(({ field }) => field)))]

it('names every field of every kind of part', () => {
  for (const field of FIELDS) expect(partFieldWord(field), field).not.toBe('')
})

it('says what to measure where the name leaves a question', () => {
  expect(FIELDS.filter((field) => partFieldHint(field) !== undefined)).toHaveLength(11)
  expect(partFieldHint('standoutIn')).toBe('bottom of the groove to the end of the shaft')
  // What a joint leaves, page of the trade: vanes 1.2, post 1.8, collar 0.8 gr [CP].
  for (const [field, said] of [
    ['vanesJointGr', '1.2'],
    ['postJointGr', '1.8'],
    ['collarJointGr', '0.8'],
  ] as const)
    expect(partFieldHint(field)).toContain(`commonly ${said}`)
})
