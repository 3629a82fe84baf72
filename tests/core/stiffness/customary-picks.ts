/** Picks that are customary in the trade [CP], and the reserve computed for each by finite elements and by shooting. */
export const CUSTOMARY_PICKS = [
  { lbf: 40, spine: 600, gpi: 6.5, frontGr: 125, reserve: 0.845 },
  { lbf: 50, spine: 500, gpi: 7.3, frontGr: 125, reserve: 0.814 },
  { lbf: 60, spine: 400, gpi: 8.4, frontGr: 125, reserve: 0.85 },
  { lbf: 70, spine: 340, gpi: 9.3, frontGr: 125, reserve: 0.859 },
  { lbf: 70, spine: 300, gpi: 9.8, frontGr: 300, reserve: 0.803 },
  { lbf: 80, spine: 250, gpi: 10.9, frontGr: 300, reserve: 0.851 },
  { lbf: 85, spine: 150, gpi: 13.27, frontGr: 590, reserve: 1.183 },
] as const
