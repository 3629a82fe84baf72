/**
 * The check value of a row of values by the hybrid system MOD n+1,n of [ISO7064]: MOD 11,10 and MOD 37,36 are its
 * standard cases.
 *
 * @param values each from 0 to n − 1
 * @param n how many characters there are, even
 */
export function hybridCheck(values: readonly number[], n: number): number {
  let product = n
  for (const value of values) {
    const sum = (product + value) % n
    product = ((sum === 0 ? n : sum) * 2) % (n + 1)
  }
  return (n + 1 - product) % n
}
