/** What every marked figure of a job's pages must be, worked out by the core from the job's exported record. */
import { difference, grains, greatest, inGrains, inches, millimetres } from '@/core/quantity'
import { accepted } from '@/domain/bench/bench'
import type { Bench } from '@/domain/bench/bench'
import { DATA_POINT_NAMES } from '@/domain/bench/data-points'
import type { ArrowBuilt } from '@/domain/bench/built'
import { expectedAt } from '@/domain/bench/expected-at'
import { glueAdvice } from '@/domain/bench/glue-advice'
import { setLanding } from '@/domain/bench/set-forecast'
import { trimAdvice } from '@/domain/bench/trim-advice'
import { builtWeightGr } from '@/domain/book/rebuild'
import { thenAndNow } from '@/domain/book/then-and-now'
import { valueIn } from '@/domain/call/follows'
import type { Implications } from '@/domain/call/implications'
import { inspection } from '@/domain/send/inspection'
import { cutFigures } from '@/domain/sheet/cut-figures'
import { windowsToCut } from '@/domain/bench/spun-shaft'
import { intoBand } from '@/domain/sheet/into-band'
import { linePlaces } from '@/domain/sheet/line-places'
import { lineWeights } from '@/domain/sheet/line-weights'
import type { Sheet } from '@/domain/sheet/sheet'
import { sheetFigures } from '@/domain/sheet/sheet-figures'
import type { LotView } from '@/domain/stock/lot-view'
import { withLearned } from '@/domain/stock/learned'
import type { Id } from '@/domain/records/scalars'
import { piecesOf } from '@/ui/figures/elevation/pieces-of'
import { adder } from './figure-adder'
import type { ExpectedFigures } from './figure-adder'

export function callFigures(follows: Implications): ExpectedFigures {
  const figures: ExpectedFigures = new Map()
  const add = adder(figures)
  const { flight } = follows
  const [weight, speed, energy, momentum, perLb, spine, shortest, longest, reach] = [
    valueIn(follows.weight),
    valueIn(flight.speed),
    valueIn(flight.energy),
    valueIn(flight.momentum),
    valueIn(flight.perLb),
    valueIn(follows.spine),
    valueIn(follows.shortest),
    valueIn(follows.longest),
    valueIn(follows.reach),
  ]
  if (weight) for (const at of ['strip', 'call']) add.of(`${at}.weight`, { min: weight.low, max: weight.high }, 'gr')
  if (speed) add.one('strip.speed', speed.speed.value, 'ft/s')
  if (speed) add.of('call.speed', speed.speed, 'ft/s')
  if (energy) add.of('call.energy', energy, 'ft·lbf')
  if (momentum) add.of('call.momentum', momentum, 'slug·ft/s')
  if (perLb) add.of('call.perLb', perLb, 'gr/lb')
  if (spine) add.of('call.spine', { min: spine.stiffest, max: spine.softest }, 'in')
  if (shortest) for (const name of ['strip.c2c', 'call.shortest']) add.one(name, shortest.c2c, 'in')
  if (longest) add.one('call.longest', longest.c2c, 'in')
  if (reach) add.of('call.reach', { min: reach.lightest, max: reach.heaviest }, 'gr')
  return figures
}

/** @param bench of the job, where its set was begun: its spun shafts have their windows on the page */
export function sheetPageFigures(sheet: Sheet, bench: Bench | null = null): ExpectedFigures {
  const figures: ExpectedFigures = new Map()
  const add = adder(figures)
  const worked = sheetFigures(sheet)
  if (worked === undefined) return figures
  const { landing, forecast, trim, trimPlan } = worked
  for (const [line, weight] of lineWeights(worked.items)) {
    add.one(`sheet.line.${line}`, weight.value, 'gr')
    add.one(`sheet.line.${line}.band`, weight.half, 'gr')
  }
  for (const [line, { fromIn, toIn }] of linePlaces(worked.geometry))
    add.of(`sheet.line.${line}.at`, { min: inches(fromIn), max: inches(toIn) }, 'in')
  piecesOf(worked.geometry).forEach(({ id, fromIn, toIn }, at) => {
    add.one(`sheet.elevation.${id}.${at}.from`, inches(fromIn), 'in')
    add.one(`sheet.elevation.${id}.${at}.to`, inches(toIn), 'in')
  })
  if (landing !== undefined && forecast.ok) {
    const { total } = forecast.value
    add.one('sheet.target', landing.target, 'gr')
    add.one('sheet.targetLessHead', difference(landing.target, worked.expectedHead), 'gr')
    add.one('sheet.landing.planned', total.value, 'gr')
    add.one('sheet.landing.planned.off', grains(Math.abs(inGrains(difference(total.value, landing.target)))), 'gr')
    add.of('sheet.forecast', total, 'gr')
  }
  add.answer('sheet.trim', trim, 'gr')
  add.answer('sheet.chance', worked.chance, '%')
  if (worked.chanceAll?.ok) add.of('sheet.chanceAll', worked.chanceAll.value.joint, '%')
  if (trimPlan?.ok) {
    add.one('sheet.trimLength', trimPlan.value.length, 'mm')
    add.one('sheet.bondLeft', trimPlan.value.bondLeft ?? millimetres(0), 'mm')
  }
  const of = worked.figures
  add.answer('sheet.speed', of?.speed, 'ft/s')
  add.answer('sheet.foc', of?.foc, '%')
  add.answer('sheet.kineticEnergy', of?.kineticEnergy, 'ft·lbf')
  add.answer('sheet.balance', of?.balance, 'in')
  add.answer('sheet.momentum', of?.momentum, 'slug·ft/s')
  add.answer('sheet.columnReserve', of?.columnReserve, '1')
  add.answer('sheet.grainsPerPound', of?.grainsPerPound, 'gr/lb')
  add.answer('sheet.finished', of?.finished, 'gr')

  const cut = cutFigures(sheet, worked)
  const ways = intoBand(sheet, worked, cut)
  add.answer('sheet.intoBand.spine', ways?.spine, 'in')
  add.answer('sheet.intoBand.c2c', ways?.c2c, 'in')
  add.answer('sheet.intoBand.head', ways?.head, 'gr')
  for (const { arrow, window: found } of bench === null ? [] : windowsToCut(bench, sheet)) {
    if (!found.ok) continue
    const { window, equal } = found.value
    const name = `sheet.window.${arrow.no}`
    add.one(`${name}.offNock`, window.offNock, 'in')
    add.one(`${name}.offPoint`, window.offPoint, 'in')
    add.one(`${name}.runOut`, window.runOut.tir, 'in')
    add.one(`${name}.equal`, equal.runOut.tir, 'in')
  }
  const { rear, shortest, stiff, clearances, plan } = cut
  if (shortest?.ok) add.one('sheet.shortestC2c', difference(shortest.value.length, rear), 'in')
  if (stiff?.ok) add.one('sheet.longestC2c', difference(stiff.value.longest, rear), 'in')
  if (plan?.ok) {
    add.one('sheet.offNock', plan.value.offNock, 'in')
    add.one('sheet.offPoint', plan.value.offPoint, 'in')
  }
  for (const { what, has, needs } of clearances?.ok ? clearances.value : []) {
    add.one(`sheet.clearance.${what.replaceAll(' ', '-')}`, has, 'in')
    add.one(`sheet.clearance.${what.replaceAll(' ', '-')}.least`, needs, 'in')
  }
  return figures
}

/** What stands marked beside a figure that reads otherwise now than when the sheet was frozen. */
export function wasFigures(frozen: Sheet): ExpectedFigures {
  const figures: ExpectedFigures = new Map()
  for (const [name, [value]] of sheetPageFigures(frozen)) if (value !== undefined) figures.set(`${name}.was`, [value])
  const { plan } = frozen
  for (const name of ['targetGr', 'c2cIn', 'quantity', 'spares', 'vaneTailIn', 'fletchDegrees', 'cockVaneDeg'] as const)
    if (plan[name] !== undefined) figures.set(`sheet.plan.${name}.was`, [plan[name]])
  return figures
}

export function benchFigures(bench: Bench, sheet: Sheet, lotViews: ReadonlyMap<Id, LotView>): ExpectedFigures {
  const figures: ExpectedFigures = new Map()
  const add = adder(figures)
  const worked = sheetFigures(withLearned(sheet, lotViews))
  if (worked === undefined) return figures
  for (const own of setLanding(bench, sheet, worked.items).arrows.values()) {
    const { arrow, forecast, over } = own
    const at = `bench.${arrow.no}`
    if (forecast.ok) {
      const { value } = forecast.value.total
      for (const name of [`bench.strip.${arrow.no}`, `bench.landing.${arrow.no}`, `${at}.headsTo`])
        add.one(name, value, 'gr')
      add.one(`bench.landing.${arrow.no}.off`, grains(Math.abs(inGrains(over))), 'gr')
    }
    for (const point of DATA_POINT_NAMES) {
      const expected = expectedAt(point, arrow, worked.items, sheet)
      if (expected !== undefined) add.one(`${at}.expected`, grains(expected.value), 'gr')
    }
    if (accepted(arrow, 'dryWeight') === undefined) continue
    const glue = glueAdvice(own, worked, sheet)
    if (glue?.advice.ok) {
      add.one(`${at}.glueChange`, glue.change, 'gr')
      add.one(`${at}.glueWeighs`, glue.weighs, 'gr')
      add.one(`${at}.glueOff`, grains(Math.abs(inGrains(glue.advice.value.over))), 'gr')
      if (glue.on !== undefined) add.one(`${at}.glueOn`, glue.on, 'gr')
    }
    const { remaining, downTo, length } = trimAdvice(own, worked, sheet)
    const light = grains(Math.abs(inGrains(over)))
    add.one(`${at}.takeOff`, own.state === 'light' ? light : greatest(grains(0), remaining), 'gr')
    add.one(`${at}.downTo`, downTo, 'gr')
    if (length?.ok) {
      add.one(`${at}.postOff`, length.value.length, 'mm')
      add.one(`${at}.bondLeft`, length.value.bondLeft, 'mm')
    }
  }
  return figures
}

export function sendFigures(bench: Bench, sheet: Sheet): ExpectedFigures {
  const figures: ExpectedFigures = new Map()
  const add = adder(figures)
  const worked = sheetFigures(sheet)
  if (worked === undefined) return figures
  const { arrows, lessHeadTarget, statistics } = inspection(bench, sheet, worked)
  for (const { arrow, target, off, foc, lessHead } of arrows) {
    add.one(`send.${arrow.no}.target`, target, 'gr')
    if (off !== undefined) add.one(`send.${arrow.no}.off`, off, 'gr')
    if (foc?.ok) add.one(`send.${arrow.no}.foc`, foc.value.value, '%')
    if (lessHead === undefined || lessHeadTarget === undefined) continue
    add.one(`send.landing.${arrow.no}`, lessHead, 'gr')
    const apart = Math.abs(inGrains(difference(lessHead, lessHeadTarget)))
    add.one(`send.landing.${arrow.no}.off`, grains(apart), 'gr')
  }
  if (statistics?.ok) {
    const { mean, spread, sd } = statistics.value
    add.one('send.mean', mean, 'gr')
    add.one('send.spread', spread, 'gr')
    if (sd !== undefined) add.one('send.sd', sd, 'gr')
  }
  add.answer('send.focPlanned', worked.figures?.foc, '%')
  return figures
}

/** A rebuild's table beside the build it repeats. */
export function thenAndNowFigures(past: Sheet, arrows: readonly ArrowBuilt[], now: Sheet): ExpectedFigures {
  const worked = sheetFigures(now)
  const rows = worked === undefined ? [] : thenAndNow(past, builtWeightGr(arrows), now, worked)
  return new Map(
    rows.flatMap(({ what, past: then, now: today, difference: apart }) =>
      (
        [
          [`sheet.past.${what}`, then],
          [`sheet.now.${what}`, today],
          [`sheet.difference.${what}`, apart],
        ] as const
      ).flatMap(([name, value]) => (value === undefined ? [] : [[name, [value]] as const])),
    ),
  )
}
