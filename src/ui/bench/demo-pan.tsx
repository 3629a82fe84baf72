/** The demo shop's scale has no pan to lay things on: these buttons do it. */
import type { BenchArrow } from '../../domain/bench/bench'
import type { DataPoint } from '../../domain/bench/data-points'
import { demoWeightGr } from '../../domain/bench/demo-weight'
import type { Sheet } from '../../domain/sheet/sheet'
import { useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { Label } from '../figures/label'
import { pointInLine } from '../words/bench-words'
import look from './scale.module.css'
import type { BenchWork } from './use-bench'

interface DemoPanProps {
  arrow: BenchArrow
  point: DataPoint
  work: BenchWork
  sheet: Sheet
}

export default function DemoPan({ arrow, point, work, sheet }: DemoPanProps) {
  const store = useAppStore()
  const expected = work.expected(point, arrow)
  return (
    <p className={`${look.pan} ${look.row}`}>
      <Label>Demo scale:</Label>
      {expected === undefined ? null : (
        <Button onClick={() => store.getState().putOnScale(demoWeightGr(point, arrow, expected, sheet))}>
          <Label>
            lay on no. {arrow.no}, {pointInLine(point)}
          </Label>
        </Button>
      )}
      <Button onClick={() => store.getState().putOnScale(0)}>clear it</Button>
    </p>
  )
}
