/**
 * Every digit that a person sees is a figure of the core, a reading, or part of a label or an entry. This finds the rest:
 * figures carry data-figure, readings data-read, labels (codes, names, dates, step numbers) data-label.
 */
import type { Page } from '@playwright/test'

/** @returns the visible texts with a digit that nothing marks, each with the path of elements to it */
export async function digitsOutsideMarks(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const MARKED = '[data-figure],[data-read],[data-label],input,textarea,select,option'
    const seen = (element: Element) =>
      !element.matches('details:not([open])') && // its own text is folded away; its summary is an element of its own
      element.checkVisibility({ opacityProperty: true, visibilityProperty: true, contentVisibilityAuto: true })
    const pathOf = (element: Element) => {
      const trail: string[] = []
      for (let at: Element | null = element; at !== null && at !== document.body; at = at.parentElement) {
        const name = at.getAttribute('class')?.split(' ')[0]
        trail.unshift(at.localName + (name ? `.${name}` : ''))
      }
      return trail.join(' > ')
    }
    const unmarked: string[] = []
    const report = (element: Element, text: string) => {
      if (/\p{Nd}/u.test(text) && element.closest(MARKED) === null && seen(element)) {
        unmarked.push(`“${text.trim().replaceAll(/\s+/g, ' ')}” in ${pathOf(element)}`)
      }
    }
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    while (texts.nextNode()) {
      const { parentElement, data } = texts.currentNode as Text
      if (parentElement !== null && !parentElement.matches('script,style,noscript,title,desc'))
        report(parentElement, data)
    }
    for (const element of document.body.querySelectorAll('*')) {
      for (const pseudo of ['::before', '::after']) {
        const { content, display } = getComputedStyle(element, pseudo)
        if (display !== 'none' && /^["']/.test(content)) report(element, content)
      }
    }
    return unmarked
  })
}
