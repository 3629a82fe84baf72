/** For a shop that has weighed nothing yet: what to weigh first, and in what order. Gone with the first weight. */
import { useMemo } from 'react'
import { Link } from 'wouter'
import { firstToWeigh } from '../../domain/stock/first-to-weigh'
import { useApp } from '../app/use-app'
import { Panel } from '../controls/panel'
import { Label } from '../figures/label'

export function FirstWeighing() {
  const shelf = useApp((s) => s.shelf)
  const guide = useMemo(() => firstToWeigh(shelf), [shelf])
  if (guide === undefined) return null
  const { lots, hasCheckWeight } = guide
  return (
    <Panel title="A first weighing">
      <p>
        Until a lot is weighed the forecast has only the catalogue’s word. Ten pieces of each lot are a good start;
        light parts go by the batch.
      </p>
      <ol>
        <li>
          {hasCheckWeight ? (
            'Put the check weight on the scale and see that it shows it.'
          ) : (
            <>
              Say in the <Link to="/shop">Shop</Link> what your scale reads to, and which weight you check it with.
            </>
          )}
        </li>
        {lots.length === 0 ? (
          <li>Open a part below and receive a lot of it: its code and how many came.</li>
        ) : (
          lots.map(({ lot, part, code, name, kind }) => (
            <li key={lot}>
              Weigh{' '}
              <Link to={`/parts/${kind.replace(' ', '-')}/${part}`}>
                <Label>
                  {name}, lot {code}
                </Label>
              </Link>
            </li>
          ))
        )}
      </ol>
    </Panel>
  )
}
