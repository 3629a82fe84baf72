/** A clock face to tap: at which angle the high side came round. Twelve places, as near as a finger and an eye are. */
import look from './run-out.module.css'

interface ClockDialProps {
  /** Chosen so far, degrees. */
  at: number | undefined
  /** What the angle belongs to, for those who hear it. */
  label: string
  onPick: (degrees: number) => void
}

const PLACES = Array.from({ length: 12 }, (_, i) => i * 30)
const REACH = 42 // percent of the dial

export const ClockDial = ({ at, label, onPick }: ClockDialProps) => (
  <fieldset className={look.dial}>
    <legend className="unseen" data-label="">
      {label}
    </legend>
    {PLACES.map((degrees) => {
      const turn = ((degrees - 90) * Math.PI) / 180
      return (
        <button
          key={degrees}
          type="button"
          className={look.hour}
          aria-pressed={at === degrees}
          style={{ left: `${50 + REACH * Math.cos(turn)}%`, top: `${50 + REACH * Math.sin(turn)}%` }}
          onClick={() => onPick(degrees)}
          data-label=""
        >
          {degrees}°
        </button>
      )
    })}
  </fieldset>
)
