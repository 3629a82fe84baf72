import { cleanup, render } from '@testing-library/react'
import { afterEach, describe, expect, it } from 'vitest'
import { cutFigures } from '@/domain/sheet/cut-figures'
import { linePlaces } from '@/domain/sheet/line-places'
import { planProblems } from '@/domain/sheet/plan-problems'
import { sheetFigures } from '@/domain/sheet/sheet-figures'
import type { Part } from '@/domain/stock/part'
import { Elevation } from '@/ui/figures/elevation/elevation'
import { piecesOf } from '@/ui/figures/elevation/pieces-of'
import { demoSheet } from '@tests/support/demo-sheet'

afterEach(cleanup)

const REST = ['Heron 200', 'Vane glue', 'Slow epoxy']
const POST = 'Long post 158'
const HEAD = 'Two-blade 250'
const CLIP = 'Clip 11'

interface Construction {
  readonly names: readonly string[]
  readonly made?: (part: Part) => Part
  /** Pieces of a line, by the part's name. */
  readonly counts?: Readonly<Record<string, number>>
}

/** Every way to make an arrow that the trade knows: common practice, no source. */
const CONSTRUCTIONS: Readonly<Record<string, Construction>> = {
  'an insert alone': { names: [POST, HEAD, CLIP] },
  'an insert with a collar': { names: [POST, 'Ring 15', HEAD, CLIP] },
  'a sleeve': {
    names: [POST, 'Footing 24', HEAD, CLIP],
    made: (part) => (part.kind === 'footing' ? { ...part, kind: 'sleeve', lengthIn: 2.4 } : part),
  },
  'a footing': { names: [POST, 'Footing 24', HEAD, CLIP] },
  'a half-out': { names: ['Half-out 110', HEAD, CLIP] },
  'an outsert': { names: ['Outsert 75', HEAD, CLIP] },
  'rear weights stacked on the post': {
    names: [POST, 'Rear weight 20', 'Rear weight 50', HEAD, CLIP],
    counts: { 'Rear weight 20': 3 },
  },
  'a pin nock on a bushing': { names: [POST, HEAD, 'Pin nock 8', 'Bushing 12'] },
  'a lighted nock': { names: [POST, HEAD, 'Lighted nock 24'] },
  'a glue-on head with an adapter': {
    names: [POST, 'Ring 15', HEAD, CLIP],
    made: (part) => {
      if (part.kind === 'broadhead') return { ...part, thread: 'glue-on' }
      if (part.kind !== 'collar') return part
      const { name, weightGr, toleranceGr, priceCents, discontinued, alternates } = part
      const every = { name, weightGr, toleranceGr, priceCents, discontinued, alternates }
      return { ...every, kind: 'adapter', aheadIn: 0.5, thread: 'glue-on' }
    },
  },
  'a wrap': { names: [POST, HEAD, CLIP, 'Film wrap 4'] },
  'three vanes': { names: [POST, HEAD, CLIP], counts: { 'Broad vane 2.6': 3 } },
  'four feathers': {
    names: [POST, HEAD, CLIP],
    made: (part) => (part.kind === 'vane' ? { ...part, kind: 'feather', lengthIn: 4 } : part),
  },
  'a field point': { names: [POST, 'Field point 250', CLIP] },
}

function built({ names, made = (part) => part, counts = {} }: Construction) {
  const sound = demoSheet({ c2cIn: 28.5, targetGr: 700 }, [...REST, ...names], { drawLengthIn: 28.5 })
  const nameOf = (id: string) => sound.parts.find((each) => each.id === id)!.part.name
  const lines = sound.plan.lines.map((line) => ({ ...line, count: counts[nameOf(line.part)] ?? line.count }))
  const parts = sound.parts.map(({ id, part }) => ({ id, part: made(part) }))
  const laid = { ...sound, parts, plan: { ...sound.plan, lines } }
  // Its target is what it comes to, less what is planned over it.
  const { forecast } = sheetFigures(laid)!
  if (!forecast.ok) throw new Error('no forecast')
  const targetGr = Math.round(forecast.value.total.value / 6.479891e-5) - 7
  return { ...laid, plan: { ...laid.plan, targetGr } }
}

describe('every construction', () => {
  it.each(Object.keys(CONSTRUCTIONS))('with %s can be planned, and is drawn where the core puts it', (name) => {
    const sheet = built(CONSTRUCTIONS[name]!)
    const worked = sheetFigures(sheet)!
    expect(worked.figures?.foc.ok).toBe(true)
    const stops = planProblems(sheet, worked, cutFigures(sheet, worked)).filter(({ level }) => level === 'stop')
    // Without a post that may be trimmed nothing comes off: the target is for the builder to raise.
    expect(stops.map(({ code }) => code).filter((code) => code !== 'nothing-to-trim')).toEqual([])

    const pieces = piecesOf(worked.geometry)
    const places = linePlaces(worked.geometry)
    expect(new Set(pieces.map(({ id }) => id))).toEqual(new Set(places.keys()))
    for (const [line, { fromIn, toIn }] of places) {
      const own = pieces.filter(({ id }) => id === line)
      expect(Math.min(...own.map((piece) => piece.fromIn))).toBe(fromIn)
      expect(Math.max(...own.map((piece) => piece.toIn))).toBe(toIn)
    }
    const rows = sheet.plan.lines.map(({ id }) => ({ id, label: id, content: '' }))
    const { container } = render(
      <Elevation name="e" pieces={pieces} rows={rows} chosen={null} onChoose={() => undefined} />,
    )
    const told = [...container.querySelectorAll<HTMLElement>('[data-figure^="e."]')]
    const shown = new Map(told.map(({ dataset }) => [dataset['figure'], Number(dataset['value'])]))
    pieces.forEach(({ id, fromIn, toIn }, at) => {
      expect(Math.abs(shown.get(`e.${id}.${at}.from`)! - fromIn)).toBeLessThan(1e-9)
      expect(Math.abs(shown.get(`e.${id}.${at}.to`)! - toIn)).toBeLessThan(1e-9)
    })
    expect(container.querySelectorAll('svg path').length).toBeGreaterThanOrEqual(pieces.length)
  })
})
