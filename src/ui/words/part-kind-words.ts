/** The kinds of part as a heading or a line names them. */
import type { PartKind } from '../../domain/stock/part'

const WORD: Record<PartKind, string> = {
  shaft: 'Shaft',
  nock: 'Nock',
  bushing: 'Bushing',
  insert: 'Insert',
  'half-out': 'Half-out',
  outsert: 'Outsert',
  collar: 'Collar',
  sleeve: 'Sleeve',
  footing: 'Footing',
  'rear weight': 'Rear weight',
  adapter: 'Adapter',
  broadhead: 'Head',
  'field point': 'Field point',
  vane: 'Vanes',
  feather: 'Feathers',
  wrap: 'Wrap',
  glue: 'Glue',
}

export const partKindWord = (kind: PartKind): string => WORD[kind]
