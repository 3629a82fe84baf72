/** What was noted at the bench, newest first, with its pictures. */
import { useEffect, useState } from 'react'
import type { Bench } from '../../domain/bench/bench'
import { notesAt } from '../../domain/bench/notes-at'
import type { BenchNote } from '../../domain/bench/notes-at'
import type { Photo } from '../../domain/records/photo'
import type { Hash } from '../../domain/records/scalars'
import { useApp } from '../app/use-app'
import { stepWords } from '../words/bench-words'
import { showMoment } from '../words/dates'
import { FORGOTTEN_NOTE, FORGOTTEN_PICTURE } from '../words/note-words'
import { Picture } from './picture'
import look from './tools.module.css'

export function Notes({ bench, notes }: { bench: Bench; notes: ReadonlyMap<Hash, string> }) {
  const all = notesAt(bench)
  const [isOpen, setOpen] = useState(false)
  if (all.length === 0) return null
  return (
    <details className={look.tool} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary data-label="">
        Notes ({all.length}): {headOf(all[0]!)}
      </summary>
      <ul className={look.notes}>
        {(isOpen ? all : []).map((each) => (
          <li key={`${each.at} ${each.note ?? each.photo}`}>
            <div>
              <p className={look.soft} data-label="">
                {headOf(each)}
              </p>
              {each.note === null ? null : <p data-label="">{notes.get(each.note) ?? FORGOTTEN_NOTE}</p>}
            </div>
            {each.photo === null ? null : <Kept hash={each.photo} alt={`Picture: ${headOf(each)}`} />}
          </li>
        ))}
      </ul>
    </details>
  )
}

const headOf = ({ no, step, by, at }: BenchNote) =>
  `${no === null ? 'the set' : `no. ${no}`}, ${stepWords(step).title.toLowerCase()}, ${by}, ${showMoment(at)}`

function Kept({ hash, alt }: { hash: Hash; alt: string }) {
  const repository = useApp((s) => s.repository)
  const [photo, setPhoto] = useState<Photo | null>()
  useEffect(() => {
    let isGone = false
    void repository?.photo(hash).then((found) => {
      if (!isGone) setPhoto(found ?? null)
    })
    return () => {
      isGone = true
    }
  }, [repository, hash])
  if (photo === undefined) return null
  return photo === null ? (
    <p className={look.soft}>{FORGOTTEN_PICTURE}</p>
  ) : (
    <Picture photo={photo} alt={alt} className={look.photo} />
  )
}
