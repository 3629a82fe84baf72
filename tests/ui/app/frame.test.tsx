import { cleanup, render, screen, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { Router } from 'wouter'
import { memoryLocation } from 'wouter/memory-location'
import { App } from '@/ui/app/app'
import { BenchBar } from '@/ui/app/bench-bar'
import { ErrorBoundary } from '@/ui/app/error-boundary'
import { Frame } from '@/ui/app/frame'
import { Page } from '@/ui/app/page'
import { SaveSlot } from '@/ui/app/save-slot'
import { SaveState } from '@/ui/app/save-state'
import { StageBar } from '@/ui/app/stage-bar'

afterEach(() => {
  cleanup()
  vi.restoreAllMocks()
  location.hash = ''
})

const at = (path: string) => memoryLocation({ path }).hook

describe('App', () => {
  it('says of an address that leads nowhere that it does, in the frame', async () => {
    location.hash = '#/nowhere/<b>4</b>'
    render(<App units="trade" saveState="Saved on this device" />)
    expect(await screen.findByRole('heading', { name: 'No such page' })).toBeTruthy()
    expect(screen.getByText('/nowhere/<b>4</b>')).toBeTruthy()
    expect(screen.getByText('Saved on this device')).toBeTruthy()
    expect(screen.getByRole('link', { name: 'Go to the jobs' }).getAttribute('href')).toBe('#/jobs')
  })
})

describe('Frame', () => {
  it('has the four places and marks the one where the page is', () => {
    render(
      <Router hook={at('/job/1/sheet')}>
        <Frame>page</Frame>
      </Router>,
    )
    const places = within(screen.getByRole('navigation', { name: 'Places' })).getAllByRole('link')
    expect(places.map((place) => [place.textContent, place.getAttribute('aria-current')])).toEqual([
      ['Jobs', 'page'],
      ['Book', null],
      ['Parts', null],
      ['Shop', null],
    ])
  })
})

describe('Page', () => {
  it('names the tab, and takes the focus to its heading on every arrival but the first', () => {
    const { unmount } = render(
      <Page title="Jobs" tab="Jobs">
        first
      </Page>,
    )
    unmount()
    render(
      <Page title="Book" tab="Book">
        second
      </Page>,
    )
    expect(document.title).toBe('Book · Grainwright')
    expect(document.activeElement).toBe(screen.getByRole('heading', { name: 'Book' }))
  })
})

describe('StageBar', () => {
  it('leads to the four stages of the job and says which this is', () => {
    render(
      <Router hook={at('/')}>
        <StageBar job="a/b" at="sheet" />
      </Router>,
    )
    expect(screen.getByRole('link', { current: 'step' }).textContent).toBe('Sheet')
    expect(screen.getAllByRole('link').map((link) => link.getAttribute('href'))).toEqual(
      ['call', 'sheet', 'bench', 'send'].map((stage) => `/job/a%2Fb/${stage}`),
    )
  })
})

describe('BenchBar', () => {
  it('shows the same save state as the frame', () => {
    render(
      <SaveSlot value="Saved on this device">
        <Router hook={at('/')}>
          <BenchBar job="1" title="Job 1" step="step 2 of 18" />
        </Router>
      </SaveSlot>,
    )
    expect(screen.getByRole('banner').textContent).toBe('Job 1step 2 of 18How this worksSaved on this device')
  })
})

describe('ErrorBoundary', () => {
  it('shows what broke and clears when the address changes', () => {
    vi.spyOn(console, 'error').mockImplementation(() => undefined)
    const Broken = () => {
      throw new Error('the shaft is no number')
    }
    const { rerender } = render(
      <ErrorBoundary at="/a">
        <Broken />
      </ErrorBoundary>,
    )
    expect(screen.getByRole('alert').textContent).toContain('the shaft is no number')
    rerender(<ErrorBoundary at="/b">whole again</ErrorBoundary>)
    expect(screen.queryByRole('alert')).toBeNull()
    expect(screen.getByText('whole again')).toBeTruthy()
  })
})

describe('SaveState', () => {
  const notSaved = {
    kind: 'not saved',
    why: 'timeout',
    detail: '',
    commands: [{ id: '0193', by: 'Ada', at: '2026-11-25T14:02:00Z' }],
  } as const

  it('says that something is not saved, and lets it be saved again or carried out', async () => {
    const onAgain = vi.fn()
    const user = userEvent.setup()
    render(<SaveState state={notSaved} onAgain={onAgain} />)
    expect(screen.getByRole('status').textContent).toMatch(/^Not saved: the disk did not answer in time/)
    await user.click(screen.getByRole('button', { name: 'Save again' }))
    expect(onAgain).toHaveBeenCalledOnce()
    await user.click(screen.getByRole('button', { name: 'Copy what was entered' }))
    expect(JSON.parse(await navigator.clipboard.readText())).toEqual(notSaved.commands)
    expect(screen.getByRole('button', { name: 'Copied' })).toBeTruthy()
  })

  it('says of how many entries it speaks', () => {
    const commands = [...notSaved.commands, { ...notSaved.commands[0], id: '0194' }]
    render(<SaveState state={{ ...notSaved, commands }} onAgain={() => undefined} />)
    expect(screen.getByRole('status').textContent).toMatch(/^2 entries not saved: /)
  })

  it('shows the text itself where the clipboard refuses', async () => {
    const user = userEvent.setup()
    vi.spyOn(navigator.clipboard, 'writeText').mockRejectedValue(new Error('no'))
    render(<SaveState state={notSaved} onAgain={() => undefined} />)
    await user.click(screen.getByRole('button', { name: 'Copy what was entered' }))
    expect(screen.getByRole<HTMLTextAreaElement>('textbox', { name: 'What was entered' }).value).toContain(
      '"by": "Ada"',
    )
  })

  it('says saved only with the time of the write', () => {
    const { rerender } = render(<SaveState state={{ kind: 'saving' }} onAgain={() => undefined} />)
    expect(screen.getByRole('status').textContent).toBe('Saving')
    rerender(<SaveState state={{ kind: 'saved', at: '2026-11-25T14:02:00Z' }} onAgain={() => undefined} />)
    expect(screen.getByRole('status').textContent).toMatch(/^Saved on this device \d\d:\d\d$/)
  })
})
