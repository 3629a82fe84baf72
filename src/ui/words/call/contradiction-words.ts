/** What to ask when two answers cannot both be so: what was said, and the question to put. */
import type { Contradiction } from '../../../domain/call/contradiction'
import { showDay } from '../dates'
import { counted, showNumber, showPlain } from '../format'

export interface ContradictionWords {
  /** Set bold. */
  readonly said: string
  readonly ask: string
}

const inch = (n: number) => showPlain(Math.round(n * 100) / 100)
const gr = (n: number) => showNumber(n, 0)
const fps = (n: number) => showNumber(n, 0)
const listed = (names: readonly string[]) => names.join(', ')

export function contradictionWords(c: Contradiction): ContradictionWords {
  switch (c.code) {
    case 'marks against draw length':
      return {
        said: `The mark at the rest is at ${inch(c.markIn)} in; a draw of ${inch(c.drawIn)} puts it near ${inch(c.expectedIn)}.`,
        ask: 'Ask which was measured, and from where.',
      }
    case 'present arrow short':
      return {
        said: `Present arrow is ${inch(c.presentIn)} in and he draws ${inch(c.drawIn)}.`,
        ask: `With the rest ${inch(c.restIn)} in from the throat it would barely reach past it. Ask where its front sits at full draw.`,
      }
    case 'present arrow long':
      return {
        said: `Present arrow is ${inch(c.presentIn)} in, long for a draw of ${inch(c.drawIn)}.`,
        ask: 'Ask whether it was measured with nock and head.',
      }
    case 'riser marks disagree':
      return {
        said: `The two marks are ${inch(c.apartIn)} in apart; rest and riser front are told ${inch(c.toldIn)} apart.`,
        ask: 'Ask which of the four was measured.',
      }
    case 'module against draw length':
      return {
        said: `The module says ${inch(c.markIn)} and the draw length is told as ${inch(c.drawIn)} in.`,
        ask: 'Ask whether the module was changed, or how the draw was measured.',
      }
    case 'draw weight off label':
      return {
        said: `${showPlain(c.peakLb)} lb is ${showNumber(c.percent, 0)} % off a label of ${showPlain(c.labelLb)}.`,
        ask: 'Ask how it was measured, and whether the limb bolts were turned.',
      }
    case 'rating against chronograph':
      return {
        said: `${showPlain(c.arrowGr)} gr at ${showPlain(c.readFps)} ft/s; the rating makes it ${fps(c.lowFps)} to ${fps(c.highFps)}.`,
        ask: 'Ask for the arrow’s weight on a scale, and the chronograph’s distance from the bow.',
      }
    case 'heavier is faster':
      return {
        said: `${showPlain(c.heavy[0])} gr is told no slower than ${showPlain(c.light[0])} gr.`,
        ask: 'No bow does that. Ask whether two readings were swapped.',
      }
    case 'arrives too late':
      return {
        said: `With ${counted(c.cureDays, 'day')} of cure it arrives ${showDay(c.arrivesOn)}, ${counted(c.days, 'day')} after he travels.`,
        ask: 'Ask whether it can follow him, or offer rush. The cure is not cut short.',
      }
    case 'travel is past':
      return { said: `${showDay(c.travelOn)} is past.`, ask: 'Ask for the day again.' }
    case 'bevel against fletch':
      return {
        said: `A ${c.bevel} bevel on a ${c.side} fletch.`,
        ask: 'They turn against each other. Ask which of the two he keeps.',
      }
    case 'no shaft for the draw weight':
      return {
        said: `No maker of a shaft that fits allows ${showPlain(c.peakLb)} lb.`,
        ask: `${listed(c.names)}: ${showPlain(c.greatestLb)} lb at most. The maker’s limit stands; another shaft is needed.`,
      }
    case 'no shaft for the front weight':
      return {
        said: `About ${gr(c.frontGr)} gr in front is more than the makers allow.`,
        ask: `${listed(c.names)}: ${gr(c.greatestGr)} gr at most. The maker’s limit stands; ask for less weight or another shaft.`,
      }
    case 'wish under the guide':
      return {
        said: `He wishes ${gr(c.wishGr)} gr and his guide asks for ${gr(c.guideGr)}.`,
        ask: 'Ask whether the guide knows the wish.',
      }
    case 'wish under the floor':
      return {
        said: `${gr(c.wishGr)} gr is under ${showPlain(c.perLbGr)} grains a pound for this bow, ${gr(c.leastGr)} gr.`,
        ask: 'Too light an arrow can wreck the bow and hurt the archer. Do not build it.',
      }
    case 'speed out of reach':
      return {
        said: `${gr(c.workingGr)} gr will fly ${fps(c.lowFps)} to ${fps(c.highFps)} ft/s; he wishes ${fps(c.wishFps)}.`,
        ask: 'Ask which matters more, weight or speed.',
      }
    case 'head heavier than the front':
      return {
        said: `A head of ${gr(c.headGr)} gr is more than the ${gr(c.frontGr)} gr left for the whole front.`,
        ask: 'Ask for a lighter head or a heavier arrow.',
      }
    case 'present front too heavy':
      return {
        said: `${gr(c.frontGr)} gr in front of an arrow of ${gr(c.presentGr)} gr.`,
        ask: 'Ask which of the two is the whole arrow.',
      }
  }
}
