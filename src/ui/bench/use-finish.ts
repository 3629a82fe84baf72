/** Closing a step and taking it back, one at a time; what it comes to is fetched beside the page. */
import { useEffect, useRef, useState } from 'react'
import type { Bench } from '../../domain/bench/bench'
import type { CureInTheWay } from '../../domain/bench/cure-state'
import type { NextThing } from '../../domain/bench/progress'
import type { Job } from '../../domain/job/job'
import type { Sheet } from '../../domain/sheet/sheet'
import { useAppStore } from '../app/use-app'
import type { JustDone } from './close-step'

/** Kept by the page, which outlives the entry of one reading. */
export interface LastOnPage {
  readonly just: JustDone | null
  readonly onDid: (just: JustDone | null) => void
}

interface FinishAt extends LastOnPage {
  job: Job
  bench: Bench
  sheet: Sheet
  thing: NextThing
  onSaid: (words: string) => void
  onNext: () => void
}

const load = () => import('./close-step')

export function useFinish({ onSaid, onNext, just, onDid, ...of }: FinishAt) {
  const store = useAppStore()
  const [early, setEarly] = useState<CureInTheWay>()
  const [past, setPast] = useState<string>()
  const busy = useRef(false)
  useEffect(() => void load(), []) // there before it is pressed
  const at = () => ({ ...of, app: store.getState() })

  /** One at a time: a second press while the first is written would confirm the next arrow unseen. */
  const once = async (task: () => Promise<void>) => {
    if (busy.current) return
    busy.current = true
    await task()
    busy.current = false
  }

  async function done(pastHold = false) {
    const closed = await (await load()).closeStep(at(), pastHold)
    if (closed.kind === 'not saved') return
    setEarly(closed.kind === 'cure' ? closed.early : undefined)
    setPast(closed.kind === 'held' ? closed.past : undefined)
    onSaid(closed.said)
    if (closed.kind !== 'done') return
    onDid({ step: of.thing.step.key, arrow: of.thing.arrow?.id ?? null })
    onNext()
  }

  async function undo() {
    const { said, elsewhere } = await (await load()).takeBack(at(), just)
    if (said === undefined) return
    onSaid(said)
    onDid(null)
    if (elsewhere) onNext()
  }

  async function endEarly() {
    if (early === undefined || !(await (await load()).endEarly(at(), early))) return
    setEarly(undefined)
    onNext()
  }

  return {
    early,
    /** The hold point that confirming would pass. */
    past,
    done: () => void once(done),
    passHold: () => void once(() => done(true)),
    undo: () => void once(undo),
    endEarly: () => void once(endEarly),
  }
}
