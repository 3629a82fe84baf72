/** How to take each measurement, in the client's words, and what to look out for. Common practice, no source. */
import type { Measure } from '../../../domain/call/open-questions'
import { showLongDay } from '../dates'

export const MEASURE_STEPS: Readonly<Record<Measure, string>> = {
  'draw weight':
    'Hook a bow scale to the string where the nock sits, and draw slowly in one pull. Write down the highest number it shows, twice.',
  'draw length':
    'Draw with an arrow nocked, as you shoot. Let a second person measure from the string to the pivot of the grip, its deepest point. Add 1¾ in and write down the sum.',
  marks:
    'Nock a long arrow with a field point and draw as you shoot. A second person, standing beside the bow, marks the arrow above the rest and at the front of the riser. Let down, and measure from the bottom of the nock’s groove to each mark.',
  'brace height': 'With the bow at rest, measure from the string square across to the pivot of the grip.',
  'module mark':
    'Find the small plate on the cam that is held by two screws. Write down the letter or number it is set to.',
  nock: 'Clip a nock on the serving without an arrow in it. It should hold its own weight, and fall off when the string is tapped. Say whether it is loose, right or tight.',
  chronograph:
    'Weigh two arrows as different as you have. Shoot each three times through a chronograph about 3 ft from the bow, and write down weight and mean speed of each.',
}

export const MEASURING_CAUTION =
  'Never draw a bow without an arrow or a scale on the string, and never point a drawn bow at anyone. Whoever marks the arrow stands beside the bow, never in front of it. Use a field point, not a broadhead.'

/** `Please send it back by Wednesday 2 December 2026.` */
export const sendBackWords = (due: string | null): string =>
  due === null ? 'Please send it back when you can.' : `Please send it back by ${showLongDay(due)}.`
