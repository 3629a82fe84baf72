import { BenchBar } from '@/ui/app/bench-bar'
import { Button } from '@/ui/controls/button'
import { Label } from '@/ui/figures/label'
import look from './patterns.module.css'

export const BenchPatterns = () => (
  <>
    <BenchBar job="0147" title="Job 0147 · bison" step="step 12 of 18">
      <Label>Saved 14:02</Label>
    </BenchBar>
    <main>
      <h1>Trim the post</h1>
      <div className={look.broad}>
        <Button broad>Undo</Button>
        <Button broad kind="primary" data-label="">
          Take 826.4, keep trimming
        </Button>
        <Button broad>Done, next</Button>
      </div>
    </main>
  </>
)
