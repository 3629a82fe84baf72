import { expect, it } from 'vitest'
import { helpTopicOf } from '@/ui/help/help-topic-of'

it.each([
  ['/jobs', 'jobs'],
  ['/job/7/call/bow', 'call'],
  ['/job/7/sheet', 'sheet'],
  ['/job/7/bench/trim/2', 'bench'],
  ['/job/7/send', 'send'],
  ['/job/7/kit', 'kit'],
  ['/job/7', 'jobs'],
  ['/book/5ab2/again', 'book'],
  ['/parts/shaft/1', 'parts'],
  ['/shop', 'shop'],
  ['/nowhere', 'jobs'],
])('is asked for on %s about %s', (path, topic) => {
  expect(helpTopicOf(path)).toBe(topic)
})
