/** The long work on a book, off the main thread: one request a worker, then it is ended. */
import './zod-jitless'
import { VIEW_RULES } from '../domain/job/view-rules'
import type { ViewRules } from '../domain/records/view-rules'
import type { Ask, Reply } from './off-thread'
import { Book } from './book'
import { longWork } from './long-work'

const reply = (message: Reply) => self.postMessage(message)

self.addEventListener('message', (message: MessageEvent<Ask>) => {
  const book = new Book(message.data.book)
  longWork(book, VIEW_RULES as unknown as ViewRules, message.data, (done) => reply({ progress: done })).then(
    (answer) => reply({ answer }),
    (error: unknown) => reply({ failed: String(error) }),
  )
})
