/** Words of arrows side by side. */
import type { Axis } from '../../domain/search/axes'
import type { PartInPlace } from '../../domain/sheet/parts-in-places'

const AXIS: Readonly<Record<Axis, string>> = {
  shaft: 'Shaft',
  nock: 'Nock',
  bushing: 'Bushing',
  vanes: 'Fletching',
  wrap: 'Wrap',
  front: 'Insert',
  ring: 'Collar',
  'rear weights': 'Rear weights',
  adapter: 'Adapter',
  head: 'Head',
}
export const axisWord = (axis: Axis): string => AXIS[axis]

/** `4 × Low vane 3, lot V-51`; *none* where nothing stands. */
export const partInPlaceWords = (parts: readonly PartInPlace[]): string =>
  parts.length === 0
    ? 'none'
    : parts
        .map(({ name, count, lotCode }) => {
          const many = count === 1 ? name : `${count} × ${name}`
          return lotCode === undefined ? many : `${many}, lot ${lotCode}`
        })
        .join('; ')
