/**
 * Values that a JSON Schema allows, so many that each of its choices is taken once: every member of an enumeration, every
 * branch of a union, every field that may be absent. The i-th value of an object takes the i-th of each of its fields.
 */
export interface Schema {
  readonly type?: string | readonly string[]
  readonly const?: unknown
  readonly enum?: readonly unknown[]
  readonly anyOf?: readonly Schema[]
  readonly oneOf?: readonly Schema[]
  readonly properties?: Readonly<Record<string, Schema>>
  readonly propertyNames?: Schema
  readonly additionalProperties?: Schema | boolean
  readonly items?: Schema
  readonly prefixItems?: readonly Schema[]
  readonly pattern?: string
  readonly format?: string
  readonly minimum?: number
  readonly exclusiveMinimum?: number
  readonly maximum?: number
}

/** One text for each form of text that records know. */
const TEXTS = [
  'as it was written',
  'own:kept apart',
  '0123456789abcdef'.repeat(4),
  '0123456789abcdef'.repeat(2),
  '01987654-3210-7abc-8def-0123456789ab',
  '2026-11-25',
  '2026-11-25T14:02:00.000Z',
  'aGVhdnk=',
  'kind',
]

/** @throws when it holds a form of text that is not among those above */
export function samplesOf(schema: Schema): readonly unknown[] {
  if (schema.const !== undefined) return [schema.const]
  if (schema.enum) return schema.enum
  const branches = schema.anyOf ?? schema.oneOf
  if (branches) return branches.flatMap(samplesOf)
  const { type } = schema
  if (typeof type === 'object') return type.flatMap((each) => samplesOf({ ...schema, type: each }))
  switch (type) {
    case 'null':
      return [null]
    case 'boolean':
      return [true, false]
    case 'integer':
    case 'number':
      return [numberOf(schema)]
    case 'array':
      if (schema.prefixItems) return together(schema.prefixItems.map(samplesOf))
      return schema.items ? samplesOf(schema.items).map((item) => [item]) : [[]]
    case 'object':
      return objectsOf(schema)
    default:
      return [textOf(schema)]
  }
}

function objectsOf({ properties = {}, propertyNames, additionalProperties }: Schema): readonly unknown[] {
  if (typeof additionalProperties === 'object') {
    const names = propertyNames ? samplesOf(propertyNames) : ['name']
    const values = samplesOf(additionalProperties)
    return values.map((value, i) => ({ [String(names[i % names.length])]: value }))
  }
  const names = Object.keys(properties)
  return together(names.map((name) => samplesOf(properties[name]!))).map((values) =>
    Object.fromEntries(names.map((name, i) => [name, values[i]])),
  )
}

/** As many rows as the longest column has values; a shorter one begins again. */
function together(columns: readonly (readonly unknown[])[]): readonly (readonly unknown[])[] {
  const rows = Math.max(1, ...columns.map((column) => column.length))
  return Array.from({ length: rows }, (_, i) => columns.map((column) => column[i % column.length]))
}

function numberOf({ minimum, exclusiveMinimum, maximum = Infinity }: Schema): number {
  const least = minimum ?? (exclusiveMinimum ?? 0) + 1
  return Math.min(maximum, least)
}

function textOf({ pattern }: Schema): string {
  const text = TEXTS.find((each) => pattern === undefined || new RegExp(pattern).test(each))
  if (text === undefined) throw new Error(`no text of the form ${pattern}`)
  return text
}
