import type { AirFinding } from '../../../core/air/findings'
import { inCelsius } from '../../../core/quantity'
import { show, showNumber } from '../format'

/** What the air has to say, in a sentence. */
export const airWords = ({ temperature, pressure }: AirFinding): string =>
  `Air of ${showNumber(inCelsius(temperature), 1)} °C and ${show(pressure, 'Pa', 0)} is outside what its density equation was published for, 15 to 27 °C and 60 000 to 110 000 Pa. The density is still good for flight; check the weather entered.`
