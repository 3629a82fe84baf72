import { digitsOutsideMarks } from './support/digits-outside-marks'
import { expect, it } from './support/fixtures'

const MARKED = `
  <p><span data-figure="speed">203.9</span> ft/s <b data-read="cutWeight"><i>826.4</i></b></p>
  <h1 data-label>Job 0147</h1>
  <label>Weight <input value="650"></label> <textarea>24</textarea> <select><option>12 gr</option></select>
  <svg><text data-figure="tick">822</text><title>figure 1</title></svg>
  <p hidden>1</p> <p style="display:none">2</p> <p style="visibility:hidden">3</p> <details><summary>More</summary>4</details>
  <script>const five = 5</script>`

it('passes a page whose every digit is a figure, a reading, a label or an entry', async ({ page }) => {
  await page.setContent(MARKED)
  expect(await digitsOutsideMarks(page)).toEqual([])
})

const UNMARKED = [
  ['in a paragraph', '<p>heads to 828.6</p>', '828.6'],
  ['beside a figure', '<p><span data-figure="a">1</span> of 18</p>', 'of 18'],
  ['in a drawing', '<svg><text>29.50</text></svg>', '29.50'],
  ['in a button', '<button>Take 826.4</button>', '826.4'],
  ['in an open part', '<details open><summary>More</summary>4</details>', '4'],
  ['made by a style sheet', '<style>li::before { content: "7." }</style><ul><li>cut</li></ul>', '7.'],
  ['in another script', '<p>٣ arrows</p>', '٣'],
] as const

for (const [where, html, digits] of UNMARKED) {
  it(`finds a digit ${where}`, async ({ page }) => {
    await page.setContent(MARKED + html)
    const found = await digitsOutsideMarks(page)
    expect(found).toHaveLength(1)
    expect(found[0]).toContain(digits)
  })
}
