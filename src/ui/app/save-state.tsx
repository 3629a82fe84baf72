/** The one save state, always in sight, fed only by the awaited write; and how old the last backup is. */
import { useState } from 'react'
import type { SaveState as State } from '../../state/save-state'
import { Button } from '../controls/button'
import { showClock } from '../words/dates'
import { notSavedCount, notSavedWords } from '../words/not-saved-words'
import look from './save-state.module.css'

interface SaveStateProps {
  state: State
  /** *last backup yesterday, 12 changes since*, in words. */
  backup?: string
  onAgain: () => void
}

export function SaveState({ state, backup, onAgain }: SaveStateProps) {
  return (
    <div className={state.kind === 'not saved' ? look.bar : look.save} data-label="">
      <output className={state.kind === 'not saved' ? look.not : undefined}>{stateWords(state)}</output>
      {state.kind === 'not saved' ? (
        <NotSaved state={state} onAgain={onAgain} />
      ) : backup === undefined ? null : (
        <p>{backup}</p>
      )}
    </div>
  )
}

function stateWords(state: State): string {
  switch (state.kind) {
    case 'idle':
      return 'Nothing to save'
    case 'saving':
      return 'Saving'
    case 'saved':
      return `Saved on this device ${showClock(state.at)}`
    case 'not saved':
      return `${notSavedCount(state.commands.length)}: ${notSavedWords(state.why)}`
  }
}

/** What was not saved can be tried again, or carried out of the app as text. */
function NotSaved({ state, onAgain }: { state: State & { kind: 'not saved' }; onAgain: () => void }) {
  const [copied, setCopied] = useState<'no' | 'yes' | 'failed'>('no')
  const text = JSON.stringify(state.commands, null, 2)
  async function copy() {
    try {
      await navigator.clipboard.writeText(text)
      setCopied('yes')
    } catch {
      setCopied('failed')
    }
  }
  return (
    <div className={look.ways}>
      <Button kind="text" onClick={onAgain}>
        Save again
      </Button>
      <Button kind="text" onClick={() => void copy()}>
        {copied === 'yes' ? 'Copied' : 'Copy what was entered'}
      </Button>
      {copied === 'failed' ? (
        <textarea className={look.copy} readOnly aria-label="What was entered" value={text} />
      ) : null}
    </div>
  )
}
