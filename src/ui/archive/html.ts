/** Pieces of a page as text. What comes from a person is text everywhere and never markup. */

/** Text as it stands in a page, between tags or in quotes. */
export const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')

export const tag = (name: string, text: string): string => `<${name}>${escaped(text)}</${name}>`

export const list = (lines: readonly string[]): string =>
  lines.length === 0 ? '' : `<ul>${lines.map((line) => tag('li', line)).join('')}</ul>`

/** The first cell of a row heads it. */
export function table(caption: string, heads: readonly string[], rows: readonly (readonly string[])[]): string {
  if (rows.length === 0) return ''
  const row = ([first = '', ...cells]: readonly string[]) =>
    `<tr><th scope="row">${escaped(first)}</th>${cells.map((cell) => tag('td', cell)).join('')}</tr>`
  const head = heads.map((each) => `<th scope="col">${escaped(each)}</th>`).join('')
  return `<table>${tag('caption', caption)}<thead><tr>${head}</tr></thead><tbody>${rows.map(row).join('')}</tbody></table>\n`
}
