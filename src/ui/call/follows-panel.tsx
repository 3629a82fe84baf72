/** What the answers so far imply, always in view: each figure with its band, its working and what it assumes. */
import type { Follows } from '../../domain/call/follows'
import { openAssumptions, valueIn } from '../../domain/call/follows'
import type { Implications } from '../../domain/call/implications'
import { Panel } from '../controls/panel'
import type { FigureProps } from '../figures/figure'
import { Figure, FigureList } from '../figures/figure'
import { partOf } from '../figures/part-of'
import type { Outcome } from '../../core/outcome'
import type { Dimension } from '../../core/quantity'
import {
  assumedWords,
  calledForWords,
  longestWords,
  needsWords,
  reachWords,
  shortestWords,
  speedWords,
  weightWords,
} from '../words/call/follows-words'
import { LawList } from './law-list'
import { ShipLine } from './ship-line'
import { TestKitLine } from './test-kit-line'

export function FollowsPanel({ follows }: { follows: Implications }) {
  const { weight, flight, spine, shortest, longest, reach } = follows
  return (
    <Panel title="What follows so far" quiet>
      <FigureList>
        <Follow
          name="call.weight"
          label="Finished weight"
          of={weight}
          pick={(v) => ({ min: v.low, max: v.high })}
          note={weightWords}
          unit="gr"
          decimals={0}
        />
        <Follow
          name="call.speed"
          label="Speed"
          of={flight.speed}
          pick={(v) => v.speed}
          note={speedWords}
          unit="ft/s"
          decimals={1}
        />
        <Follow
          name="call.energy"
          carried
          label="Energy"
          of={flight.energy}
          pick={(v) => v}
          unit="ft·lbf"
          decimals={1}
        />
        <Follow
          name="call.momentum"
          carried
          label="Momentum"
          of={flight.momentum}
          pick={(v) => v}
          unit="slug·ft/s"
          decimals={3}
        />
        <Follow
          name="call.perLb"
          carried
          label="Grains per pound"
          of={flight.perLb}
          pick={(v) => v}
          unit="gr/lb"
          decimals={1}
        />
        <Follow
          name="call.spine"
          label="Stiffness called for"
          of={spine}
          pick={(v) => ({ min: v.stiffest, max: v.softest })}
          note={calledForWords}
          unit="in"
          decimals={3}
        />
        <Follow
          name="call.shortest"
          label="Shortest C2C"
          of={shortest}
          pick={(v) => v.c2c}
          note={shortestWords}
          unit="in"
          decimals={2}
        />
        <Follow
          name="call.longest"
          label="Longest C2C"
          of={longest}
          pick={(v) => v.c2c}
          note={longestWords}
          unit="in"
          decimals={2}
        />
        <Follow
          name="call.reach"
          label="The shelf reaches"
          of={reach}
          pick={(v) => ({ min: v.lightest, max: v.heaviest })}
          note={reachWords}
          unit="gr"
          decimals={0}
        />
        <TestKitLine advice={follows.testKit} />
        <ShipLine ship={follows.ship} />
      </FigureList>
      <LawList rows={follows.law} />
    </Panel>
  )
}

interface FollowProps<T, D extends Dimension> extends Pick<FigureProps<D>, 'name' | 'label' | 'unit' | 'decimals'> {
  of: Follows<T>
  pick: (value: T) => Extract<FigureProps<D>['of'], { ok: true }>['value']
  note?: (value: T) => string
  /** What it assumes stands beside another figure already. */
  carried?: boolean
}

function Follow<T, D extends Dimension>({ of, pick, note, carried = false, ...shown }: FollowProps<T, D>) {
  if (of.kind === 'needs')
    return (
      <Figure {...shown} of={undefined} missing={<span data-label="">{needsWords(of.anyOf, of.noRuleFor)}</span>} />
    )
  const value = valueIn(of)
  const words = carried || value === undefined ? undefined : noteWords(note?.(value), of)
  return (
    <Figure
      {...shown}
      of={partOf(of.outcome as Outcome<T>, pick)}
      note={words === undefined ? undefined : <span data-label="">{words}</span>}
    />
  )
}

/** Why it is so, and on what assumptions it stands. */
function noteWords<T>(words: string | undefined, of: Follows<T>): string | undefined {
  const assumed = of.kind === 'figure' && of.outcome.ok ? openAssumptions(of.outcome.derivation) : []
  const parts = [words ?? '', assumed.length === 0 ? '' : `assumed: ${assumedWords(assumed)}`].filter(
    (part) => part !== '',
  )
  return parts.length === 0 ? undefined : parts.join('; ')
}
