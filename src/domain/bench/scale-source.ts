/** A scale as the bench speaks to it: it sends text when it likes. The port behind it is handed in from outside. */
import type { ScalePattern } from './scale-pattern'

export interface Heard {
  /** A piece of text as it came, with the milliseconds of a clock that only goes forward. */
  text(chunk: string, at: number): void
  /** A few times a second, so that silence is noticed. */
  tick(at: number): void
  /** Unplugged, switched off, or taken by another program. */
  lost(): void
}

export interface ScaleSource {
  listen(heard: Heard): void
  close(): Promise<void>
  /** Lays a weight on it; only the demo scale can. */
  put?(gr: number): void
}

export interface SerialSettings {
  readonly baudRate: number
  readonly dataBits: 7 | 8
  readonly parity: 'none' | 'even' | 'odd'
  readonly stopBits: 1 | 2
  /** The scale sends no unit and stands in grains. */
  readonly sendsGrains: boolean
  /** Absent: its lines are understood as they are. */
  readonly pattern?: ScalePattern
}
/** As most scales leave the works: common practice, no source [CP]. */
export const USUAL_SERIAL: SerialSettings = {
  baudRate: 9600,
  dataBits: 8,
  parity: 'none',
  stopBits: 1,
  sendsGrains: false,
}

export type ScaleWish =
  | {
      readonly kind: 'serial'
      /** Which of the shop's scales it is; its settings are kept under that name. */
      readonly name: string
      readonly settings: SerialSettings
      /** Opens the port that was chosen before, without asking; refused when there is none. */
      readonly again: boolean
    }
  | { readonly kind: 'demo'; readonly name: string }

/** Why a scale could not be opened. */
export type ScaleRefusal = 'no serial ports here' | 'none chosen' | 'could not be opened'
export type OpenScale = (wish: ScaleWish) => Promise<ScaleSource | ScaleRefusal>
