/** The sentence of every finding of the core. A code without an entry here does not compile. */
import type { Finding } from '../../core/finding'
import { airWords } from './findings/air-findings'
import { balanceWords } from './findings/balance-findings'
import { bowWords } from './findings/bow-findings'
import { cureWords } from './findings/cure-findings'
import { cutWords } from './findings/cut-findings'
import { energyWords } from './findings/energy-findings'
import { envelopeWords } from './findings/envelope-findings'
import { flightWords } from './findings/flight-findings'
import { lawWords } from './findings/law-findings'
import { outsideModelWords } from './findings/outside-model-words'
import { runOutWords } from './findings/runout-findings'
import { statisticsWords } from './findings/statistics-findings'
import { stiffnessWords } from './findings/stiffness-findings'
import { trimWords } from './findings/trim-findings'
import { weightWords } from './findings/weight-findings'

type Sentences = { readonly [C in Finding['code']]: (finding: Extract<Finding, { code: C }>) => string }

const SENTENCES: Sentences = {
  'outside-model': outsideModelWords,
  'air-beyond-published-range': airWords,
  'length-to-head-tip': balanceWords,
  'balance-disagrees': balanceWords,
  'too-few-points': bowWords,
  'equal-weights': bowWords,
  'weights-too-close': bowWords,
  'speed-does-not-fall-with-weight': bowWords,
  'negative-virtual-mass': bowWords,
  'wild-reading': bowWords,
  'readings-scatter': bowWords,
  extrapolated: bowWords,
  'draw-does-not-go-on': bowWords,
  'curve-starts-with-force': bowWords,
  'let-down-spans-another-draw': bowWords,
  'let-down-above-draw': bowWords,
  'no-power-stroke': bowWords,
  'rating-needs': bowWords,
  'less-trusted-source': bowWords,
  'speed-not-known': bowWords,
  'too-cold-to-cure': cureWords,
  'too-hot-to-cure': cureWords,
  'cure-times-reversed': cureWords,
  'full-draw-not-known': cutWords,
  'full-draw-estimated': cutWords,
  'mark-against-draw-length': cutWords,
  'clearance-short': cutWords,
  'clearance-against-stiffness': cutWords,
  'clearance-against-raw-shaft': cutWords,
  'stiffness-against-raw-shaft': cutWords,
  'cut-wish-moved': cutWords,
  'raw-shaft-too-short': cutWords,
  'too-little-to-cut': cutWords,
  'cut-from-one-end': cutWords,
  'cut-moved-along': cutWords,
  'arrow-light-for-bow': energyWords,
  'envelope-already-left': envelopeWords,
  'envelope-not-known-past': envelopeWords,
  'envelope-reach': envelopeWords,
  'range-beyond-flight': flightWords,
  'no-ranges': flightWords,
  'speed-does-not-fall-with-distance': flightWords,
  'distances-too-close': flightWords,
  'drag-beyond-published': flightWords,
  'head-outsteers-vanes': flightWords,
  'steering-margin-thin': flightWords,
  'broadhead-takes-steering': flightWords,
  'legal-figure-not-met': lawWords,
  'rule-silent-on-game': lawWords,
  'check-with-authority': lawWords,
  'places-not-whole': runOutWords,
  'no-stations': runOutWords,
  'supports-too-close': runOutWords,
  'stations-coincide': runOutWords,
  'window-longer-than-shaft': runOutWords,
  'run-out-extrapolated': runOutWords,
  'too-few-values': statisticsWords,
  'no-spread': statisticsWords,
  'beyond-control-limits': statisticsWords,
  'spread-over': statisticsWords,
  'part-runs-backwards': stiffnessWords,
  'shaft-has-no-length': stiffnessWords,
  'bore-wider-than-tube': stiffnessWords,
  'band-reversed': stiffnessWords,
  'range-reversed': stiffnessWords,
  'reserve-below-band': stiffnessWords,
  'reserve-above-band': stiffnessWords,
  'no-spine-stiff-enough': stiffnessWords,
  'no-spine-soft-enough': stiffnessWords,
  'spine-range-cut-off': stiffnessWords,
  'no-length-short-enough': stiffnessWords,
  'no-length-long-enough': stiffnessWords,
  'trim-into-bond': trimWords,
  'light-arrow': trimWords,
  'chamfer-takes-more': trimWords,
  'pass-too-coarse': trimWords,
  'no-mend': trimWords,
  'no-such-part': trimWords,
  'lot-off-catalogue': weightWords,
  'surprising-reading': weightWords,
  'nothing-to-forecast': weightWords,
  'lighter-than-its-parts': weightWords,
  'scale-off': weightWords,
}

export const findingWords = (finding: Finding): string =>
  (SENTENCES[finding.code] as (finding: Finding) => string)(finding)
