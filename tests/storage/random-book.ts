/** Random books: clients with versions, jobs with readings and notes, stock that moves, photos, people forgotten. */
import fc from 'fast-check'
import type { Command } from '@/domain/ports'
import { personalOf } from '@/domain/records/personal'
import { photoOf } from '@/domain/records/photo'
import { newEvent, newFact } from '@/domain/records/write'
import { AT } from './fresh-shop'
import type { Shop } from './fresh-shop'

export type Step =
  | { readonly do: 'client'; readonly name: string }
  | { readonly do: 'rename'; readonly which: number; readonly name: string }
  | { readonly do: 'job'; readonly client: number }
  | {
      readonly do: 'read'
      readonly job: number
      readonly arrow: number
      readonly value: number
      readonly minute: number
    }
  | { readonly do: 'note'; readonly job: number; readonly text: string }
  | { readonly do: 'photo'; readonly job: number; readonly byte: number }
  | { readonly do: 'stock'; readonly lot: number; readonly by: number }
  | { readonly do: 'forget'; readonly which: number }

const name = fc.string({ minLength: 1, maxLength: 12, unit: 'grapheme' })
export const step: fc.Arbitrary<Step> = fc.oneof(
  fc.record({ do: fc.constant('client' as const), name }),
  fc.record({ do: fc.constant('rename' as const), which: fc.nat(9), name }),
  fc.record({ do: fc.constant('job' as const), client: fc.nat(9) }),
  fc.record({
    do: fc.constant('read' as const),
    job: fc.nat(4),
    arrow: fc.nat(3),
    value: fc.double({ min: 0, max: 2000, noNaN: true }),
    minute: fc.nat(59),
  }),
  fc.record({ do: fc.constant('note' as const), job: fc.nat(4), text: fc.string({ maxLength: 40, unit: 'grapheme' }) }),
  fc.record({ do: fc.constant('photo' as const), job: fc.nat(4), byte: fc.nat(255) }),
  fc.record({ do: fc.constant('stock' as const), lot: fc.nat(2), by: fc.integer({ min: -12, max: 24 }) }),
  fc.record({ do: fc.constant('forget' as const), which: fc.nat(9) }),
)
export const steps = (max: number) => fc.array(step, { maxLength: max })

/** Gives the commands of the steps to a shop, one after another. */
export async function live(shop: Shop, all: readonly Step[]): Promise<void> {
  for (const command of commandsOf(shop, all)) {
    const receipt = await shop.repository.commit(command)
    if (receipt.kind !== 'saved') throw new Error(receipt.detail)
  }
}

/** The commands of the steps. A step that names what is not there yet does nothing. */
export function* commandsOf(
  shop: Pick<Shop, 'ids' | 'newClient' | 'openJob' | 'read' | 'moveStock' | 'command'>,
  all: readonly Step[],
): Generator<Command> {
  const clients: { subject: string; head: string; personal: string[] }[] = []
  const jobs: { job: string; arrows: string[] }[] = []
  const lots: string[] = []
  for (const each of all) {
    switch (each.do) {
      case 'client': {
        const made = shop.newClient(each.name)
        clients.push({ subject: made.subject, head: made.fact.hash, personal: [made.personal.hash] })
        yield made.command
        break
      }
      case 'rename': {
        const client = clients[each.which % (clients.length || 1)]
        if (!client) break
        const made = shop.newClient(each.name, client.subject, [client.head])
        client.head = made.fact.hash
        client.personal.push(made.personal.hash)
        yield made.command
        break
      }
      case 'job': {
        const made = shop.openJob(clients[each.client % (clients.length || 1)]?.subject ?? null)
        jobs.push({ job: made.job, arrows: Array.from({ length: 4 }, () => shop.ids.id()) })
        yield made.command
        break
      }
      case 'read': {
        const job = jobs[each.job % (jobs.length || 1)]
        const at = `2031-05-04T10:${String(each.minute).padStart(2, '0')}:00.000Z`
        if (job) yield shop.read(job.job, job.arrows[each.arrow]!, each.value, at)
        break
      }
      case 'note': {
        const job = jobs[each.job % (jobs.length || 1)]
        const note = personalOf(shop.ids.salt(), { note: each.text })
        if (job) {
          const event = newEvent('noted', { job: job.job }, { step: 'call', note: note.hash })
          yield shop.command({ events: [event], personal: [note] })
        }
        break
      }
      case 'photo': {
        const job = jobs[each.job % (jobs.length || 1)]
        const photo = photoOf('image/png', new Uint8Array(300).fill(each.byte))
        if (job) {
          const event = newEvent('photographed', { job: job.job }, { step: 'call', photo: photo.hash })
          yield shop.command({ events: [event], photos: [photo] })
        }
        break
      }
      case 'stock': {
        while (lots.length <= each.lot) lots.push(shop.ids.id())
        yield shop.moveStock(shop.ids.id(), lots[each.lot]!, each.by)
        break
      }
      case 'forget': {
        const client = clients[each.which % (clients.length || 1)]
        if (!client) break
        const body = { forget: client.personal }
        yield shop.command({ facts: [newFact({ by: 'Ansa', at: AT }, 'redaction', client.subject, body)] })
        break
      }
    }
  }
}
