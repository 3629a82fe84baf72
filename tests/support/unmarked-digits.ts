/** Texts with a digit that nothing marks as figure, reading or label: each page must have none. */
const MARKED = '[data-figure],[data-read],[data-label],input,textarea'

export function unmarkedDigits(root: Element): string[] {
  const found: string[] = []
  const texts = document.createTreeWalker(root, NodeFilter.SHOW_TEXT)
  while (texts.nextNode()) {
    const text = texts.currentNode
    if (/\d/.test(text.textContent ?? '') && text.parentElement?.closest(MARKED) === null) found.push(text.textContent!)
  }
  return found
}
