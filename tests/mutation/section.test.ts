/** Run by the mutation tests alone (docs/mutation.md): the topic's part of the calculations page, as the docs test holds it. */
import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { section, type Topic } from '@tests/core/worked-examples/page'

it('works the topic through as the page has it', () => {
  const topic = process.env['AREA'] as Topic
  expect(readFileSync('docs/calculations.md', 'utf8')).toContain(section(topic))
})
