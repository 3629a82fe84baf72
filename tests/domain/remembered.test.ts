import { expect, it } from 'vitest'
import { remembered } from '@/domain/remembered'

it('works a pair out once, and another pair anew', () => {
  const asked: string[] = []
  const joined = remembered((a: { name: string }, b: { name: string }) => {
    asked.push(a.name + b.name)
    return a.name === 'nothing' ? undefined : a.name + b.name
  })
  const [nock, post, nothing] = [{ name: 'nock' }, { name: 'post' }, { name: 'nothing' }]
  expect([joined(nock, post), joined(nock, post), joined(post, nock), joined(nock, nock)]).toEqual([
    'nockpost',
    'nockpost',
    'postnock',
    'nocknock',
  ])
  expect([joined(nothing, nock), joined(nothing, nock)]).toEqual([undefined, undefined])
  expect(asked).toEqual(['nockpost', 'postnock', 'nocknock', 'nothingnock'])
})
