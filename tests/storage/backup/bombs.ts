/** Files made to exhaust whoever reads them as a backup; each must be refused, and soon. */
import { gzipSync } from 'node:zlib'
import { canonical } from '@/domain/records/canonical'
import { bytesOf, joined } from './backup-of'

type Bytes = Uint8Array<ArrayBuffer>

const HEADER = canonical({ header: { app: 'Grainwright', format: 1, schema: 1 } })
const headed = (line: string): Bytes => bytesOf(`${HEADER}\n${line}\n`)
const zipped = (bytes: Uint8Array): Bytes => new Uint8Array(gzipSync(bytes))
/** Small as a file, more than a gigabyte once it is unpacked. */
const gigabyteOf = (text: string, before = ''): Bytes => {
  const block = gzipSync(Buffer.alloc(64 * 1024 * 1024, text))
  return joined([...(before === '' ? [] : [gzipSync(before)]), ...Array.from({ length: 20 }, () => block)])
}

/** @param whole a backup that reads */
export const bombs = (whole: Bytes): Readonly<Record<string, () => Bytes>> => {
  const [, record = ''] = new TextDecoder().decode(whole).split('\n')
  const record200000 = Array.from({ length: 200_000 }, () => record).join('\n')
  return {
    'a small file that unpacks to more than a gigabyte': () => gigabyteOf('{"a":1}\n'),
    'the same behind a header that is right': () => gigabyteOf('{"a":1}\n', `${HEADER}\n`),
    'a gigabyte of nothing but line ends': () => gigabyteOf('\n', `${HEADER}\n`),
    'a gigabyte without a line end': () => gigabyteOf(' ', `${HEADER}\n`),
    'a gigabyte of zeros': () => gigabyteOf('\0'),
    'the same record over and over': () => zipped(headed(record200000)),
    'the same record over and over, not packed': () => headed(record200000),
    'a line without an end': () => headed(`"${'a'.repeat(5_000_000)}`),
    'a record nested a million deep': () => headed('['.repeat(1_000_000)),
    'objects nested a million deep': () => headed('{"a":'.repeat(1_000_000)),
    'nested just deeper than is allowed, often': () =>
      headed(Array.from({ length: 20_000 }, () => `${'['.repeat(40)}${']'.repeat(40)}`).join('\n')),
    'a text of a million letters': () => headed(canonical({ personal: { text: 'x'.repeat(1_000_000) } })),
    'a name of a million letters': () => headed(`{"${'x'.repeat(1_000_000)}":1}`),
    'a text of escapes that is too long': () => headed(`{"a":"${'\\u0041'.repeat(70_000)}"}`),
    'a record of six hundred thousand fields': () =>
      headed(`{"personal":{${Array.from({ length: 600_000 }, (_, n) => `"f${n}":1`).join(',')}}}`),
    'one name a million times': () => headed(`{"personal":{${'"name":1,'.repeat(1_000_000)}"name":1}}`),
    'a format from the future': () =>
      bytesOf(`${canonical({ header: { app: 'Grainwright', format: 2, schema: 1 } })}\n`),
    'a header of a megabyte': () => bytesOf(`{"header":{"app":"${'G'.repeat(1_000_000)}","format":1,"schema":1}}\n`),
    'a gzip that breaks off': () => zipped(whole).slice(0, 60),
    'a gzip that is damaged': () => zipped(whole).map((byte, i) => (i > 40 && i < 80 ? byte ^ 0x55 : byte)),
  }
}
