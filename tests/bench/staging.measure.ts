/** Staging a backup: how soon a file made to exhaust its reader is refused, in processor time of the whole process: 3 s at most. */
import { readBackup } from '@/storage/backup/read-backup'
import { live } from '@tests/storage/random-book'
import { backupOf, fileOf } from '@tests/storage/backup/backup-of'
import { bombs } from '@tests/storage/backup/bombs'
import { freshShop } from '@tests/storage/fresh-shop'
import { type Measure, overLimit } from './measure'

const SECONDS = 3

const shop = await freshShop()
await live(shop, [{ do: 'client', name: 'Ilmari Vesa' }])
const whole = await backupOf(shop.repository)

export default Object.entries(bombs(whole)).map(
  ([name, make]): Measure => ({
    name: `refusing ${name}`,
    async take() {
      const file = make()
      const began = process.cpuUsage()
      const { kind } = await readBackup(fileOf(file))
      const { user, system } = process.cpuUsage(began)
      const seconds = (user + system) / 1e6
      if (kind !== 'refused') throw new Error(`it was ${kind}`)
      return {
        said: `${(file.length / 1e6).toFixed(1)} MB, ${(seconds * 1000).toFixed(0)} ms`,
        over: overLimit('seconds', seconds, SECONDS),
      }
    },
  }),
)
