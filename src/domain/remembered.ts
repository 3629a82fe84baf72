/**
 * A pure function of two objects that never change, worked out once for each pair. What is remembered goes with the objects.
 */
export function remembered<A extends object, B extends object, R>(work: (a: A, b: B) => R): (a: A, b: B) => R {
  const known = new WeakMap<A, WeakMap<B, { readonly result: R }>>()
  return (a, b) => {
    const ofA = known.get(a) ?? new WeakMap<B, { readonly result: R }>()
    known.set(a, ofA)
    const before = ofA.get(b)
    if (before !== undefined) return before.result
    const result = work(a, b)
    ofA.set(b, { result })
    return result
  }
}
