/** Which of the sources a speed came from. */
import type { Provenance } from '../../core/bow/findings'

const WORDS: Record<Provenance, string> = {
  chronograph: 'from the chronograph',
  'one weight': 'from readings of one arrow weight and a typical virtual mass',
  'force-draw curve': 'from the force-draw curve',
  rating: 'from the bow’s rating',
}

export const provenanceWords = (provenance: Provenance): string => WORDS[provenance]
