/** Whether a test kit should go out first, and why. */
import type { Implications } from '../../domain/call/implications'
import { Label } from '../figures/label'
import { kitReasonWords } from '../words/call/follows-words'
import look from './call.module.css'

export const TestKitLine = ({ advice }: { advice: Implications['testKit'] }) => (
  <div className={look.line}>
    <dt>Test kit</dt>
    <dd className={look.lineValue}>
      {advice.isAdvisable ? 'advisable' : advice.reasons.length > 0 ? 'can wait' : 'no reason yet'}
    </dd>
    {advice.reasons.length === 0 ? null : (
      <dd className={look.lineNote}>
        <Label>{advice.reasons.map(kitReasonWords).join('; ')}</Label>
      </dd>
    )}
  </div>
)
