/** Who owes an open answer, and by when. */
import type { Owner } from '../../domain/call/open-questions'
import type { QuestionId } from '../../domain/call/questions'
import { ChoiceField } from '../controls/choice-field'
import { DayField } from '../controls/day-field'
import { OWNER_WORDS } from '../words/call/open-words'
import type { Call } from './use-call'

const OWNERS: readonly Owner[] = ['client', 'guide', 'shop']

interface OwedByProps {
  id: QuestionId
  answer: { readonly owedBy: Owner; readonly due: string | null }
  call: Call
}

export const OwedBy = ({ id, answer, call }: OwedByProps) => (
  <>
    <ChoiceField
      label="Owed by"
      name={`${id}.owedBy`}
      choices={OWNERS.map((value) => ({ value, label: OWNER_WORDS[value] }))}
      value={answer.owedBy}
      onChoose={(owedBy) => call.putOff(id, { ...answer, owedBy })}
    />
    <DayField
      label="By"
      name={`${id}.due`}
      today={call.today}
      value={answer.due ?? undefined}
      onCommit={(due) => call.putOff(id, { owedBy: answer.owedBy, due })}
      onClear={() => call.putOff(id, { owedBy: answer.owedBy, due: null })}
    />
  </>
)
