import { difference, type Length, sum } from '../quantity'

/** What lies between throat and shaft front besides the shaft. */
export interface Ends {
  /** From the throat to the shaft's rear end. */
  readonly nockStandout: Length
  /** Shoulder of an outsert that the arrow length is measured to, ahead of the shaft's end; 0 where it is not. */
  readonly shoulder: Length
}

/** Throat to shaft front (or designated shoulder) of a shaft cut to a length [F1435]. */
export const arrowLength = (c2c: Length, { nockStandout, shoulder }: Ends): Length => sum(nockStandout, c2c, shoulder)

/** Carbon to carbon of an arrow of a length: {@link arrowLength} turned round. */
export const c2cOf = (length: Length, { nockStandout, shoulder }: Ends): Length =>
  difference(length, sum(nockStandout, shoulder))
