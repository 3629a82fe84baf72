import { inches } from '@/core/quantity'
import { SideView } from '@/ui/figures/side-view/side-view'
import { PrintSheet } from '@/ui/print/print-sheet'
import { PIECES } from './samples'

export const PrintPatterns = () => (
  <PrintSheet
    paper="a4"
    title="Build sheet"
    facts={{
      shop: 'Ridge Shop',
      job: 'K7QD-1043-9 · bison',
      record: '4J7K-Q2MB',
      version: 2,
      hash: '3f9c1ab27e04',
      made: '9 Dec 2026',
    }}
    sheets={[
      <>
        <h1 data-label="">Six arrows on 832.0 gr</h1>
        <SideView
          name="side"
          pieces={PIECES}
          spans={[{ key: 'c2c', label: 'C2C', fromIn: 0.55, toIn: 28.55, of: inches(28) }]}
        />
      </>,
      <p key="two">Second sheet.</p>,
    ]}
  />
)
