/** Where the focus goes when somebody is named; the save behind it may answer when the builder is already elsewhere. */
import { cleanup, render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { useRef } from 'react'
import { afterEach, expect, it } from 'vitest'
import { implications } from '@/domain/call/implications'
import { DEFAULT_RULES } from '@/domain/shop/rules'
import { EMPTY_SHELF } from '@/domain/stock/shelf'
import { TopicQuestions } from '@/ui/call/topic-questions'
import type { Call } from '@/ui/call/use-call'
import { TODAY } from '../../domain/call/told-call'

afterEach(cleanup)

const CALL = {
  answers: {},
  follows: implications({}, DEFAULT_RULES, EMPTY_SHELF, TODAY),
} as unknown as Call

function ClientPage({ begin }: { begin: number }) {
  const begun = useRef(0)
  return (
    <TopicQuestions topic="client" call={CALL} begin={begin} begunRef={begun} onEnd={() => {}}>
      <input aria-label="Name" defaultValue="Ada Oduya" />
      <input aria-label="Phone" />
    </TopicQuestions>
  )
}

it('is the first field', () => {
  const { rerender } = render(<ClientPage begin={0} />)
  rerender(<ClientPage begin={1} />)
  expect(document.activeElement).toBe(screen.getByRole('textbox', { name: 'Name' }))
})

it('stays where the builder types by then, so that a phone number never lands in the name', async () => {
  const { rerender } = render(<ClientPage begin={0} />)
  await userEvent.type(screen.getByRole('textbox', { name: 'Phone' }), '555')
  rerender(<ClientPage begin={1} />)
  await userEvent.keyboard(' 0101')
  expect(screen.getByRole<HTMLInputElement>('textbox', { name: 'Phone' }).value).toBe('555 0101')
  expect(screen.getByRole<HTMLInputElement>('textbox', { name: 'Name' }).value).toBe('Ada Oduya')
})
