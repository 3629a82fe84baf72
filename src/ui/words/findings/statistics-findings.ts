import { UNITS } from '../../../core/quantity'
import type { StatisticsFinding } from '../../../core/statistics/findings'
import { counted, showIn } from '../format'

/** What the statistics of a set have to say, in a sentence. */
export function statisticsWords(finding: StatisticsFinding): string {
  switch (finding.code) {
    case 'too-few-values':
      return finding.got === 0
        ? `There is no value yet for the ${finding.figure}; it needs ${finding.needed}.`
        : `${counted(finding.got, 'value')} for the ${finding.figure}; it needs ${finding.needed}. Take the readings that are missing.`
    case 'no-spread':
      return `All values are alike, so no ${finding.figure} can be worked out. Check that each was read for itself.`
    case 'beyond-control-limits':
      return `${finding.places.length === 1 ? 'Reading' : 'Readings'} ${finding.places.join(', ')} beyond the control limits. Something changed there: another lot, another scale, a slip. Ask before going on.`
    case 'spread-over': {
      const said = (si: number) => showIn(si / UNITS[finding.unit].si, finding.unit, 2)
      return `Lightest and heaviest lie ${said(finding.spread)} apart; the shop allows ${said(finding.limit)}. Pair the parts again, or trim the heaviest.`
    }
  }
}
