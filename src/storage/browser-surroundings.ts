/** The surroundings a browser gives: local storage, timers, a channel between tabs. */
import type { Change, Tally } from '../domain/ports'
import { afterwards } from './afterwards'
import { ballast } from './ballast'
import { BOOKS } from './book'
import { freshLog } from './fresh-log'
import { offThread } from './off-thread'
import { localSecondCopy } from './second-copy/second-copy'
import type { Remembered, Surroundings } from './surroundings'

const key = (book: string) => `${book}:remembered`

export function browserSurroundings(book: string): Surroundings {
  const channel = new BroadcastChannel(book)
  const later = afterwards()
  const weight = ballast(book)
  return {
    ...(typeof Worker === 'undefined' ? {} : { offThread }),
    ballast: weight,
    freshLog: () => freshLog(book, weight),
    ...(book === BOOKS.demo ? {} : { secondCopy: localSecondCopy(book, later) }),
    outside: {
      read: (of) => {
        later.now()
        return read(of)
      },
      write: (of, tally) => later.soon(() => write(of, tally)),
      fail,
      forget: (of) => {
        later.now()
        forget(of)
      },
    },
    after: (milliseconds, call) => {
      const timer = setTimeout(call, milliseconds)
      return () => clearTimeout(timer)
    },
    announcer: {
      tell: (change) => later.soon(() => channel.postMessage(change)),
      hear: (heard) => channel.addEventListener('message', (message: MessageEvent<Change>) => heard(message.data)),
      close: () => {
        later.end()
        channel.close()
      },
    },
  }
}

// Where local storage is blocked or full the record itself is on the disk all the same; only the alarm has less to go by.

function read(book: string): Remembered | undefined {
  try {
    return JSON.parse(localStorage.getItem(key(book)) ?? 'null') ?? undefined
  } catch {
    return undefined
  }
}

function write(book: string, tally: Tally): void {
  const before = read(book)
  const known = before?.tally
  if (known && (known.events > tally.events || known.facts > tally.facts)) return
  keep(book, { ...before, tally })
}

const fail = (book: string, failed: string) => keep(book, { ...read(book), failed })

function keep(book: string, remembered: Remembered): void {
  try {
    localStorage.setItem(key(book), JSON.stringify(remembered))
  } catch {
    // see above
  }
}

function forget(book: string): void {
  try {
    localStorage.removeItem(key(book))
  } catch {
    // see above
  }
}
