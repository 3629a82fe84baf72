/** The Gauss-Kronrod pair of 7 and 15 points on −1 to 1: node, its Kronrod weight, its Gauss weight [QUADPACK]. */
const PAIR: readonly (readonly [node: number, kronrod: number, gauss: number])[] = [
  [0, 0.209_482_141_084_727_82, 0.417_959_183_673_469_4],
  [0.207_784_955_007_898_48, 0.204_432_940_075_298_89, 0],
  [0.405_845_151_377_397_2, 0.190_350_578_064_785_42, 0.381_830_050_505_118_9],
  [0.586_087_235_467_691_1, 0.169_004_726_639_267_9, 0],
  [0.741_531_185_599_394_5, 0.140_653_259_715_525_92, 0.279_705_391_489_276_64],
  [0.864_864_423_359_769_1, 0.104_790_010_322_250_19, 0],
  [0.949_107_912_342_758_5, 0.063_092_092_629_978_56, 0.129_484_966_168_869_7],
  [0.991_455_371_120_812_6, 0.022_935_322_010_529_224, 0],
]

const MOST_HALVINGS = 40

interface Panel {
  readonly value: number
  readonly error: number
}

function panel(f: (x: number) => number, from: number, to: number): Panel {
  const half = (to - from) / 2
  const middle = from + half
  let kronrod = 0
  let gauss = 0
  for (const [node, k, g] of PAIR) {
    const at = node === 0 ? f(middle) : f(middle - half * node) + f(middle + half * node)
    kronrod += k * at
    gauss += g * at
  }
  return { value: kronrod * half, error: Math.abs((kronrod - gauss) * half) }
}

function refined(f: (x: number) => number, from: number, to: number, tolerance: number, depth: number): number {
  const whole = panel(f, from, to)
  if (whole.error <= tolerance || depth === MOST_HALVINGS) return whole.value
  const middle = (from + to) / 2
  return refined(f, from, middle, tolerance / 2, depth + 1) + refined(f, middle, to, tolerance / 2, depth + 1)
}

/**
 * The integral of f over the panels between the given points, each halved until the Gauss and the Kronrod sums agree.
 * Plain numbers: x and f carry whatever units the caller gives them.
 *
 * @param f finite on the whole range
 * @param points at least two, rising; put one where f bends sharply
 * @param tolerance absolute, on the whole
 *
 * Source: [QUADPACK].
 */
export function adaptiveIntegral(f: (x: number) => number, points: readonly number[], tolerance: number): number {
  const share = tolerance / Math.max(1, points.length - 1)
  return points.slice(1).reduce((total, to, i) => total + refined(f, points[i]!, to, share, 0), 0)
}
