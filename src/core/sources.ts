/**
 * Every source a formula, constant, limit or caution is cited from. `[KEY]` in a comment and `source` in a derivation
 * name these. docs/sources.md is generated from this table.
 * Status: P published and read, C computed twice from published equations, M from memory, CP common practice, no source.
 */
export const SOURCES = {
  SP811: {
    title: 'NIST Special Publication 811, Guide for the Use of the International System of Units, Appendix B',
    status: 'P',
  },
  F1435: {
    title: 'ASTM F1435, Standard Specification for Determining Arrow Length and Balance Point (read in part)',
    status: 'P',
  },
  ASHBY08: { title: 'E. Ashby, arrow lethality study reports, 2008 update: classes of FOC', status: 'P' },
  GUM: {
    title:
      'JCGM 100:2008, Guide to the expression of uncertainty in measurement: F.2.2.1 resolution, 5.1.2 propagation, G.4.1 effective degrees of freedom',
    status: 'M',
  },
  TN1297: {
    title: 'NIST Technical Note 1297, section 4.6: a tolerance with nothing else known is uniform',
    status: 'M',
  },
  EHANDBOOK: {
    title:
      'NIST/SEMATECH e-Handbook of Statistical Methods: 6.1.6 capability, 6.3.2.2 individuals control charts, 1.3.6.7.2 t table',
    status: 'P',
  },
  STRD: {
    title: 'NIST Statistical Reference Datasets, univariate summary statistics and linear regression',
    status: 'P',
  },
  AS64: {
    title: 'Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 6.1.41, 26.2.11, 26.2.14, 26.2.23, 26.7',
    status: 'M',
  },
  DLMF: { title: 'NIST Digital Library of Mathematical Functions, 5.11.1, 8.17.22', status: 'M' },
  QUADPACK: { title: 'R. Piessens et al., QUADPACK (1983): Gauss-Kronrod pair of 7 and 15 points', status: 'M' },
  BDA3: {
    title:
      'A. Gelman et al., Bayesian Data Analysis, 3rd ed., 2.5: normal data of known variance; 3.3: unknown mean and variance, conjugate prior',
    status: 'M',
  },
  F2031: {
    title:
      'ASTM F2031, static spine of arrow shafts: supports 28 in apart, 1.94 lb at the middle (from secondary texts)',
    status: 'P',
  },
  RHEINGANS: {
    title: 'W. R. Rheingans and F. Nagler, 1930s: wood spine, 2 lb at the middle of 26 in, pounds = 26 over inches',
    status: 'P',
  },
  CHANDRUPATLA: {
    title:
      'T. R. Chandrupatla, A new hybrid quadratic/bisection algorithm for finding the zero of a nonlinear function, Advances in Engineering Software 28 (1997)',
    status: 'M',
  },
  EULER: {
    title: 'L. Euler, 1744: the column under end load, π²EI/L² hinged, a quarter of it clamped-free',
    status: 'P',
  },
  GREENHILL: {
    title: 'A. G. Greenhill, 1881: greatest height of a column under its own weight, 7.8373 EI/L² clamped-free',
    status: 'P',
  },
  TIMO: {
    title:
      'S. P. Timoshenko and J. M. Gere, Theory of Elastic Stability, 2nd ed. (1961), chapter 2: columns, varying thrust',
    status: 'M',
  },
  THOMSON: {
    title: 'W. T. Thomson, Theory of Vibration with Applications, App. D: natural modes of beams',
    status: 'P',
  },
  ARR203: {
    title: 'ATA ARR-203, arrow shaft straightness: run-out on supports 28 in apart, 25 in for shorter shafts',
    status: 'P',
  },
  MATERIALS: { title: 'University and trade materials tables of density', status: 'P' },
  HANDBOOK_E: { title: "Engineering handbooks, Young's modulus of common metals", status: 'M' },
  B777: { title: 'ASTM B777-15, Tungsten Base, High-Density Metal: density by class', status: 'P' },
  PAPPUS: {
    title: "Pappus's centroid theorem: a ring's volume is its section times the way of its centroid",
    status: 'P',
  },
  'AK-5AAC92': { title: 'Alaska Administrative Code 5 AAC 92.085', status: 'P' },
  'WA-220-414-070': { title: 'Washington Administrative Code WAC 220-414-070', status: 'P' },
  'AR-06.04': { title: 'Arkansas Game and Fish Commission code 06.04, 2019', status: 'P' },
  'VIC-2012': { title: 'Victoria, Wildlife (Game) Regulations 2012, since replaced', status: 'P' },
  'ZW-SI114': { title: 'Zimbabwe Statutory Instrument 114 of 2019, from press', status: 'P' },
  GVL: {
    title: 'G. H. Golub and C. F. Van Loan, Matrix Computations, 5.2 and 5.3: least squares by Householder QR',
    status: 'M',
  },
  DP80: {
    title:
      'J. R. Dormand and P. J. Prince, A family of embedded Runge-Kutta formulae, J. Comp. Appl. Math. 6 (1980) 19-26',
    status: 'M',
  },
  KLOPSTEG: {
    title: 'P. E. Klopsteg, 1940s papers on the physics of bows: the virtual mass, E = (m + K)v²/2',
    status: 'P',
  },
  TUYN92: {
    title:
      "C. Tuyn and B. W. Kooi, The measurement of arrow velocities in the students' laboratory, Eur. J. Phys. 13 (1992), Table I",
    status: 'P',
  },
  LIMBS: {
    title: 'An analysis of bow limbs, a published measurement of a 66 in recurve: stored energy, speeds, virtual mass',
    status: 'P',
  },
  F1832: { title: 'ASTM F1832, force-draw and let-down curves of archery bows (cited, not read in full)', status: 'M' },
  F1544: { title: 'ASTM F1544-11, rated speed of a bow: 70 lb, 30 in draw, arrow of 5 gr per lb', status: 'P' },
  F1880: {
    title: 'ASTM F1880-09, draw length: string to grip pivot at full draw, plus 1¾ in; brace height: string to pivot',
    status: 'P',
  },
  'WSR00-06-090': {
    title: 'Washington State Register 00-06-090: 6 grains per pound recommended by the industry',
    status: 'P',
  },
  'FLOOR-GPP': { title: 'Five grains per pound: the rating load, and a customary floor', status: 'M' },
  USSA76: { title: 'U.S. Standard Atmosphere, 1976 (NOAA-S/T 76-1562): eqs. 18, 23, 33a, 42 and Table I', status: 'P' },
  CIPM07: {
    title:
      'A. Picard, R. S. Davis, M. Gläser and K. Fujii, Revised formula for the density of moist air (CIPM-2007), Metrologia 45 (2008) 149-155',
    status: 'P',
  },
  MIYAZAKI20: {
    title: 'T. Miyazaki, KAKEN report FY2020: drag coefficient of arrows, 1.3 laminar to 2.6 turbulent near Re 2·10⁴',
    status: 'P',
  },
  ORTIZ20: {
    title: 'J. Ortiz et al., 2020: drag of arrows, 1.56 and 2.05 at Re 1.2·10⁴, small and large vanes',
    status: 'P',
  },
  MECHANICS: {
    title: 'Elementary mechanics: kinetic energy, momentum, free fall, a body slowed by the square of its speed',
    status: 'P',
  },
  BARROWMAN: {
    title: 'J. S. and J. A. Barrowman, The theoretical prediction of the center of pressure, NARAM-8 (1966)',
    status: 'P',
  },
  GALEJS: {
    title:
      "R. Galejs, Wind instability: what Barrowman left out: a slender body's cross-flow lift, about 1.1·A_plan/A·sin²α",
    status: 'M',
  },
  RFC8785: {
    title: 'RFC 8785, JSON Canonicalization Scheme: 3.2.2, 3.2.3, Appendix B',
    status: 'P',
  },
  RFC4180: { title: 'RFC 4180, Common format for CSV files: section 2', status: 'M' },
  RFC9562: { title: 'RFC 9562, Universally Unique Identifiers: 5.7 version 7, Appendix A.6', status: 'M' },
  FIPS180: { title: 'FIPS 180-4, Secure Hash Standard: SHA-256 and its examples', status: 'M' },
  ISO7064: {
    title: 'ISO/IEC 7064, Check character systems: hybrid systems; example of MOD 37,36 from the GRid standard',
    status: 'M',
  },
  MEMORY: { title: 'A value from memory', status: 'M' },
  CP: { title: 'Common practice, no source', status: 'CP' },
  OWN: { title: 'Derived here from the cited equations; see docs/calculations.md', status: 'C' },
} as const satisfies Record<string, { readonly title: string; readonly status: 'P' | 'C' | 'M' | 'CP' }>

export type SourceKey = keyof typeof SOURCES
