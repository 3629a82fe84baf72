import type { Page } from '@playwright/test'

/**
 * Goes to all that can have the focus, down the page and up again, as Tab and Shift + Tab do: WCAG 2.2, 2.4.11.
 * @returns what is out of sight or under a bar that stays in view, and each such bar higher than a third of the window
 */
export const hiddenFocus = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const SAMPLES = [0.05, 0.5, 0.95] // of the height that is in view
    const within = document.querySelector('dialog[open]') ?? document
    const barOf = (at: Element | null): Element | null => {
      if (at === null) return null
      return ['sticky', 'fixed'].includes(getComputedStyle(at).position) ? at : barOf(at.parentElement)
    }
    const reached = [
      ...within.querySelectorAll<HTMLElement>('a[href], button, input, select, textarea, summary, [tabindex="0"]'),
    ].filter((each) => each.checkVisibility() && !each.matches(':disabled'))
    const said = new Set<string>()
    let tried = 0
    for (const each of [...reached, ...reached.toReversed()]) {
      each.focus()
      if (document.activeElement !== each) continue
      tried += 1
      const { left, width, top, bottom } = each.getBoundingClientRect()
      const [from, to] = [Math.max(0, top), Math.min(innerHeight, bottom)]
      const name = `${each.localName} “${(each.getAttribute('name') ?? each.textContent ?? '').slice(0, 40)}”`
      if (from >= to) said.add(`${name} is out of sight`)
      for (const part of SAMPLES) {
        const x = Math.min(Math.max(0, left + width / 2), innerWidth - 1)
        const bar = barOf(document.elementFromPoint(x, from + part * (to - from)))
        if (bar === null || bar.contains(each) || within === bar) continue
        said.add(`${name} is under a bar`)
      }
      for (const y of [1, innerHeight - 2]) {
        const bar = barOf(document.elementFromPoint(innerWidth / 2, y))
        if (bar === null || bar === within || bar.getBoundingClientRect().height <= innerHeight / 3) continue
        said.add('a bar takes more than a third of the window')
      }
    }
    if (tried === 0) said.add('nothing has the focus')
    return [...said]
  })
