import { cleanup, render, screen, within } from '@testing-library/react'
import { afterEach, describe, expect, it } from 'vitest'
import { DEFAULT_RULES } from '@/domain/shop/rules'
import { PrintSheet } from '@/ui/print/print-sheet'
import { unmarkedDigits } from '@tests/support/unmarked-digits'

afterEach(cleanup)

const facts = { job: 'K7QD-1043-9', record: '4J7K-Q2MB', version: null, hash: null, made: '9 Dec 2026' }

describe('PrintSheet', () => {
  it('says on the screen that a shop without a name stands on it as one, and where to name it', () => {
    const { rerender } = render(
      <PrintSheet
        paper="a4"
        title="Client sheet"
        facts={{ ...facts, shop: DEFAULT_RULES.shopName }}
        sheets={['one']}
      />,
    )
    const link = screen.getByRole('link', { name: 'Name the shop' })
    expect(link.getAttribute('href')).toBe('/shop')
    expect(link.closest('.screen-only')).toBeTruthy()
    rerender(<PrintSheet paper="a4" title="Client sheet" facts={{ ...facts, shop: 'Ridge Shop' }} sheets={['one']} />)
    expect(screen.queryByRole('link')).toBeNull()
  })
  it('puts shop, job, record, version, hash and page n of m on every sheet', () => {
    render(
      <PrintSheet
        paper="letter"
        title="Build sheet"
        facts={{
          shop: 'Ridge Shop',
          job: 'K7QD-1043-9 · bison',
          record: '4J7K-Q2MB',
          version: 2,
          hash: '3f9c1ab2',
          made: '9 Dec 2026',
        }}
        sheets={['first', 'second']}
      />,
    )
    const feet = screen.getAllByRole('region').map((sheet) => sheet.querySelector('footer')!.textContent)
    const foot = (page: number) =>
      `Ridge ShopBuild sheetJobK7QD-1043-9 · bisonRecord4J7K-Q2MBVersion2, 9 Dec 2026Hash3f9c1ab2Page${page} of 2`
    expect(feet).toEqual([foot(1), foot(2)])
    expect(within(screen.getByRole('region', { name: 'Page 2 of 2' })).getByText('second')).toBeTruthy()
    expect(unmarkedDigits(document.body)).toEqual([])
  })
})
