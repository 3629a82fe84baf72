/** Versions that two devices made apart: all are shown, who made each, when and in what it differs; a person keeps one. */
import { useEffect, useState } from 'react'
import type { Id } from '../../domain/records/scalars'
import { headsApart, joinHeads } from '../../state/join-heads'
import type { Head, Joinable } from '../../state/join-heads'
import { useApp, useAppStore } from '../app/use-app'
import { apartWords } from '../words/apart-words'
import { showMoment } from '../words/dates'
import { Button } from './button'
import look from './versions-apart.module.css'
import { Notice } from './notice'
import { Label } from '../figures/label'

interface VersionsApartProps {
  kind: Joinable
  subject: Id
  /** *this part*, *the shop’s rules*. */
  what: string
}

export function VersionsApart({ kind, subject, what }: VersionsApartProps) {
  const store = useAppStore()
  const repository = useApp((s) => s.repository)
  const shelf = useApp((s) => s.shelf)
  const [heads, setHeads] = useState<readonly Head[]>([])
  useEffect(() => {
    let gone = false
    if (repository !== null) {
      void headsApart(repository, kind, subject).then((found) => {
        if (!gone) setHeads(found)
      })
    }
    return () => {
      gone = true
    }
  }, [repository, shelf, kind, subject])
  if (heads.length < 2) return null
  const keep = async (head: Head) => {
    if (await joinHeads(store.getState(), heads, head)) setHeads([])
  }
  return (
    <div className={look.apart}>
      <Notice level="look">
        <Label>
          Two devices changed {what} apart, and {heads.length} versions stand. Keep one; the others stay in the record.
        </Label>
      </Notice>
      <ul>
        {heads.map((head) => {
          const who = `${head.fact.by}, ${showMoment(head.fact.at)}`
          const others = heads.filter((each) => each !== head).map(({ fields }) => fields)
          return (
            <li key={head.fact.hash}>
              <Label>
                {who}
                {head.fact.reason === undefined ? '' : `, ${head.fact.reason}`}. {apartWords(head.fields, others)}
              </Label>
              <Button onClick={() => void keep(head)}>
                Keep this one
                <span className="unseen" data-label="">
                  {' '}
                  by {who}
                </span>
              </Button>
            </li>
          )
        })}
      </ul>
    </div>
  )
}
