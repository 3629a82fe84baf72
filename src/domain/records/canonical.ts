/**
 * Canonical JSON, [RFC8785]: one text for one value, whatever order its fields were written in, so that a hash made today
 * can be made again in ten years by anyone with the standard in hand. Numbers and strings are what ECMAScript's own
 * `JSON.stringify` gives, which is what the standard builds on; fields are sorted by UTF-16 code units. A field that is
 * `undefined` is left out, as JSON leaves it out.
 *
 * @throws TypeError for what has no JSON form: NaN, an infinity, a lone surrogate, `undefined`, a function, a bigint
 */
export function canonical(value: unknown): string {
  switch (typeof value) {
    case 'string':
      if (LONE_SURROGATE.test(value)) throw new TypeError('A text with half a surrogate pair has no JSON form')
      return JSON.stringify(value)
    case 'number':
      if (!Number.isFinite(value)) throw new TypeError(`${value} has no JSON form`)
      return JSON.stringify(value)
    case 'boolean':
      return value ? 'true' : 'false'
    case 'object':
      if (value === null) return 'null'
      return Array.isArray(value) ? `[${value.map(canonical).join(',')}]` : canonicalObject(value)
    default:
      throw new TypeError(`A ${typeof value} has no JSON form`)
  }
}

const LONE_SURROGATE = /\p{Surrogate}/u

function canonicalObject(value: object): string {
  const fields = Object.entries(value).filter(([, field]) => field !== undefined)
  if (Object.hasOwn(value, '__proto__')) throw new TypeError('A field may not be named __proto__') // copies would lose it
  fields.sort(([a], [b]) => (a < b ? -1 : 1))
  return `{${fields.map(([name, field]) => `${canonical(name)}:${canonical(field)}`).join(',')}}`
}
