import { lawCheck } from '@/core/law/law-check'
import type { DemandKind } from '@/core/law/place-rule'
import { PLACE_RULES } from '@/core/law/place-rules'
import { UNITS, type Unit } from '@/core/quantity'
import { answer } from '@tests/support/answer'
import { checks } from './outside-check'

const least = (place: string, what: DemandKind, unit: Unit, game?: string) => {
  const rule = PLACE_RULES.find((each) => each.place === place)!
  const rows = answer(lawCheck(rule, {})).rows.filter(({ demand }) => demand.what === what)
  const row = rows.find(({ demand }) => (game === undefined ? demand.game === undefined : demand.game?.includes(game)))
  return (row!.least!.value * UNITS[row!.least!.unit].si) / UNITS[unit].si
}

export const LAW_CHECKS = [
  ...checks({ status: 'P', source: 'AK-5AAC92' }, [
    ['draw weight', '40', 'lb', () => least('Alaska', 'peak draw weight', 'lbf')],
    ['draw weight for moose', '50', 'lb', () => least('Alaska', 'peak draw weight', 'lbf', 'moose')],
    ['draw weight for bison', '50', 'lb', () => least('Alaska', 'peak draw weight', 'lbf', 'bison')],
    ['arrow length', '20', 'in', () => least('Alaska', 'arrow length', 'in')],
    ['arrow weight', '300', 'gr', () => least('Alaska', 'arrow weight', 'gr')],
  ]),
  ...checks({ status: 'P', source: 'WA-220-414-070' }, [
    ['draw weight', '40', 'lb', () => least('Washington', 'peak draw weight', 'lbf')],
    ['grains per pound', '6', 'gr/lb', () => least('Washington', 'arrow weight per draw weight', 'gr/lb')],
    ['arrow weight', '300', 'gr', () => least('Washington', 'arrow weight', 'gr')],
    ['head width', '0.875', 'in', () => least('Washington', 'broadhead width', 'in')],
  ]),
  ...checks({ status: 'P', source: 'AR-06.04' }, [
    ['draw weight', '35', 'lb', () => least('Arkansas', 'peak draw weight', 'lbf')],
    ['head width', '0.875', 'in', () => least('Arkansas', 'broadhead width', 'in')],
  ]),
  ...checks({ status: 'P', source: 'VIC-2012' }, [
    ['draw weight for sambar', '50', 'lb', () => least('Victoria', 'peak draw weight', 'lbf', 'sambar')],
    ['arrow weight for rusa', '400', 'gr', () => least('Victoria', 'arrow weight', 'gr', 'rusa')],
    ['draw weight for fallow', '45', 'lb', () => least('Victoria', 'peak draw weight', 'lbf', 'fallow')],
    ['arrow weight for chital', '350', 'gr', () => least('Victoria', 'arrow weight', 'gr', 'chital')],
  ]),
  ...checks({ status: 'P', source: 'ZW-SI114' }, [
    ['head width for buffalo', '30', 'mm', () => least('Zimbabwe', 'broadhead width', 'mm', 'buffalo')],
  ]),
]
