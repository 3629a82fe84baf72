/** Puts rows in another order: dragged by the label with a finger or a mouse, or with Alt and an arrow key. */
import type { KeyboardEvent, MouseEvent, PointerEvent, RefObject } from 'react'
import { useLayoutEffect, useRef, useState } from 'react'

type OnMove = (order: readonly string[], id: string, to: number) => void

const SLACK_PX = 8 // a hand is never still: less is a tap

interface Drag {
  readonly id: string
  readonly to: number
  /** On which side of the row it is over it would come to stand. */
  readonly side: 'before' | 'after'
}

const STEP: Readonly<Record<string, number>> = { ArrowUp: -1, ArrowDown: 1 }

export function useRowMoves(list: RefObject<HTMLElement | null>, order: readonly string[], onMove: OnMove | undefined) {
  const [drag, setDrag] = useState<Drag | null>(null)
  const begun = useRef<{ readonly id: string; readonly y: number } | null>(null)
  const wasDragged = useRef(false)
  const moved = useRef<string | null>(null)

  // A row that is moved in the document loses the focus; it is given back.
  const shown = order.join()
  useLayoutEffect(() => {
    if (moved.current === null) return
    list.current?.querySelector<HTMLElement>(`[data-line="${moved.current}"] button`)?.focus()
    moved.current = null
  }, [list, shown])

  const dragTo = (id: string, y: number): Drag => {
    const rows = [...(list.current?.children ?? [])].map((row) => row.getBoundingClientRect())
    const under = rows.findIndex(({ bottom }) => y < bottom)
    const to = under < 0 ? rows.length - 1 : under
    return { id, to, side: to < order.indexOf(id) ? 'before' : 'after' }
  }
  const letGo = () => {
    begun.current = null
    setDrag(null)
  }

  const keys = (id: string) =>
    onMove === undefined
      ? {}
      : {
          onKeyDown: (event: KeyboardEvent) => {
            const step = STEP[event.key]
            if (step === undefined || !event.altKey) return
            event.preventDefault()
            const to = order.indexOf(id) + step
            if (to < 0 || to >= order.length) return
            moved.current = id
            onMove(order, id, to)
          },
          onPointerDown: (event: PointerEvent) => {
            wasDragged.current = false
            if (event.button !== 0) return
            begun.current = { id, y: event.clientY }
            event.currentTarget.setPointerCapture(event.pointerId)
          },
          onPointerMove: (event: PointerEvent) => {
            const from = begun.current
            if (from === null || (drag === null && Math.abs(event.clientY - from.y) < SLACK_PX)) return
            wasDragged.current = true
            setDrag(dragTo(id, event.clientY))
          },
          onPointerUp: () => {
            if (drag !== null && drag.to !== order.indexOf(id)) onMove(order, id, drag.to)
            letGo()
          },
          onPointerCancel: letGo,
          // The click that ends a drag chooses nothing.
          onClickCapture: (event: MouseEvent) => {
            if (wasDragged.current) event.stopPropagation()
            wasDragged.current = false
          },
        }
  return { drag, keys }
}
