/** Who is at the bench: every reading from now on is by that name. Another takes over with one tap. */
import { useApp } from '../app/use-app'
import look from './at-bench.module.css'

export function AtBench({ onSaid }: { onSaid: (words: string) => void }) {
  const builder = useApp((s) => s.builder)
  const setBuilder = useApp((s) => s.setBuilder)
  const known = useApp((s) => s.shelf.rules.builders)
  const names = known.includes(builder) ? known : [builder, ...known]
  return (
    <fieldset className={look.names}>
      <legend className="unseen">At the bench</legend>
      {names.map((name) => (
        <button
          key={name}
          type="button"
          aria-pressed={name === builder}
          data-label=""
          onClick={() => {
            setBuilder(name)
            onSaid(`${name} is at the bench. What is read from now on is by ${name}.`)
          }}
        >
          {name}
        </button>
      ))}
    </fieldset>
  )
}
