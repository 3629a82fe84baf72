/** What is out of the ordinary: a sign, a word and a sentence, so that colour is never alone. */
import type { ReactNode } from 'react'
import type { Level } from '../words/level'
import look from './notice.module.css'

const WORD: Record<Level, string> = { note: 'Note', look: 'Look', stop: 'Stop' }
const SIGN: Record<Level, string> = {
  note: 'M8 2v12',
  look: 'M8 2.5 14.5 13.5H1.5Z',
  stop: 'M5 1.5h6L14.5 5v6L11 14.5H5L1.5 11V5Z',
}

interface NoticeProps {
  level: Level
  /** Set bold before the sentence: *Eyes and lungs:*. Without it the level's own word stands there. */
  lead?: ReactNode
  children: ReactNode
}

export const Notice = ({ level, lead, children }: NoticeProps) => (
  <div className={`${look.notice} ${look[level]}`} data-level={level}>
    <svg className={look.sign} viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
      <path d={SIGN[level]} />
    </svg>
    <p data-label="">
      <b className={look.word}>{lead ?? `${WORD[level]}:`}</b> {children}
    </p>
  </div>
)
