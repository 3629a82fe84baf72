// Recomputes every hash of a Grainwright backup, or of an archive page, from the file alone: node verify-backup.mjs FILE
// The rules it follows stand in docs/records.md. Needs Node 20 or later and nothing else.
import { createHash } from 'node:crypto'
import { createReadStream } from 'node:fs'
import { createInterface } from 'node:readline'

const sha256 = (bytes) => createHash('sha256').update(bytes).digest('hex')
/** RFC 8785: fields sorted by UTF-16 code units, numbers and texts as ECMAScript writes them. */
const canonical = (value) => {
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`
  if (value === null || typeof value !== 'object') return JSON.stringify(value)
  return `{${Object.keys(value).sort().map((key) => `${JSON.stringify(key)}:${canonical(value[key])}`).join(',')}}`
}

const root = createHash('sha256')
const counts = { event: 0, fact: 0, personal: 0, photo: 0 }
const [ends, facts, parents, problems] = [new Map(), new Set(), [], []] // ends: of each log, its last event
let [number, footer] = [0]
const SIGNS = { lt: '<', gt: '>', quot: '"', amp: '&' }

/** The lines of a backup; of an archive page those inside its pre element, with its entities read back. */
async function* recordLines(file) {
  let where = 'before'
  for await (const line of createInterface({ input: createReadStream(file), crlfDelay: Infinity })) {
    if (where === 'before') where = line.startsWith('<!doctype') ? 'page' : 'backup'
    if (where === 'records' && line.startsWith('</pre>')) return
    if (where !== 'page') yield where === 'backup' ? line : line.replace(/&(lt|gt|quot|amp);/g, (_, sign) => SIGNS[sign])
    if (line.endsWith('<pre>')) where = 'records'
  }
}
for await (const line of recordLines(process.argv[2])) {
  const problem = (what) => problems.push(`line ${number}: ${what}`)
  const [[kind, record]] = Object.entries(JSON.parse(line))
  number++
  if (footer) problem('stands after the end')
  if (kind === 'footer') footer = record
  else root.update(`${line}\n`)
  if (!(kind in counts)) continue
  counts[kind]++
  const { hash, ...rest } = record
  const said = kind === 'photo' ? Buffer.from(record.bytes.join(''), 'base64') : canonical(rest)
  if (sha256(said) !== hash) problem(`this ${kind} does not fit its hash`)
  if (kind === 'fact') facts.add(hash)
  if (kind === 'fact') parents.push(...record.parents.map((parent) => [number, parent]))
  if (kind === 'event') {
    const before = ends.get(record.log) ?? { seq: 0, hash: '0'.repeat(64) }
    if (record.seq !== before.seq + 1 || record.prev !== before.hash) problem('does not follow the event before it')
    ends.set(record.log, record)
  }
}
for (const [at, parent] of parents) if (!facts.has(parent)) problems.push(`line ${at}: its parent ${parent} is missing`)
if (!footer) problems.push('the file is cut short: it has no end')
else if (footer.root !== root.digest('hex')) problems.push('the content does not fit the root hash at the end')
else if (canonical(footer.counts) !== canonical(counts)) problems.push('the counts at the end are not those of the file')

console.log(`${counts.fact} facts, ${counts.event} events, ${counts.personal} personal, ${counts.photo} photos`)
console.log(problems.length === 0 ? 'Every hash fits.' : problems.join('\n'))
process.exitCode = problems.length === 0 ? 0 : 1
