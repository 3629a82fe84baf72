import type { Force, Length, Mass, MassPerForce } from '../quantity'
import type { SourceKey } from '../sources'

/** What an instrument asks of the bow, the arrow or the broadhead, as a least figure. */
export type FigureDemand =
  | { readonly what: 'peak draw weight'; readonly least: Force }
  | { readonly what: 'arrow weight'; readonly least: Mass }
  | { readonly what: 'arrow weight per draw weight'; readonly least: MassPerForce }
  | { readonly what: 'arrow length'; readonly least: Length }
  | { readonly what: 'broadhead width'; readonly least: Length }

/** What an instrument asks that is no figure of the sheet: a person confirms it. */
export interface Confirmation {
  readonly what: 'no barbs on the broadhead' | 'no electronics on the arrow' | 'hunting with the bow' | 'trained guide'
}

/** The game a demand is for; none means all. */
export type Demand = (FigureDemand | Confirmation) & { readonly game?: readonly string[] }
export type DemandKind = Demand['what']

/** What is known of the instrument's standing: nothing but that it was read, that it was replaced, or press reports of it. */
export type RuleStanding = 'read' | 'since replaced' | 'from press'

/** One place's rule. The table is the shop's to extend and edit. */
export interface PlaceRule {
  readonly place: string
  readonly instrument: string
  readonly dated?: string
  readonly standing: RuleStanding
  readonly source?: SourceKey
  readonly note?: string
  readonly demands: readonly Demand[]
}
