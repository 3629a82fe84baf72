/** What a file may say to a person: its quoted texts with a space in them, its templates, the text between its tags. */
import { parseAst } from 'vite'

export function sentencesOf(text: string): readonly string[] {
  const said: string[] = []
  const visit = (node: unknown): void => {
    if (Array.isArray(node)) return node.forEach(visit)
    if (typeof node !== 'object' || node === null) return
    const { type, value } = node as { type?: string; value?: unknown }
    if (type === 'Literal' && typeof value === 'string' && value.includes(' ')) said.push(value)
    if (type === 'JSXText' && typeof value === 'string') said.push(value)
    if (type === 'TemplateElement') said.push((value as { cooked: string }).cooked)
    Object.values(node).forEach(visit)
  }
  visit(parseAst(text, { lang: 'tsx' }).body)
  return said.filter((sentence) => /\p{L} | \p{L}/u.test(sentence))
}
