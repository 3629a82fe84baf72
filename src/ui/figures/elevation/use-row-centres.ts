/** How high a list of rows stands and where the middle of each is, measured, so that leaders meet their lines. */
import type { RefObject } from 'react'
import { useLayoutEffect, useState } from 'react'

export interface RowCentres {
  readonly height: number
  readonly centres: readonly number[]
}

/**
 * @param list positioned, so that the offsets of its rows are counted from it
 * @param pitch row height in pixels until there is a layout to measure
 */
export function useRowCentres(list: RefObject<HTMLElement | null>, count: number, pitch: number): RowCentres {
  const [measured, setMeasured] = useState<RowCentres>()
  useLayoutEffect(() => {
    const element = list.current
    if (element === null || typeof ResizeObserver === 'undefined') return undefined
    const measure = () => {
      const rows = [...element.children] as HTMLElement[]
      const next = {
        height: element.offsetHeight,
        centres: rows.map((row) => row.offsetTop + row.offsetHeight / 2),
      }
      setMeasured((now) => (JSON.stringify(now) === JSON.stringify(next) ? now : next))
    }
    measure()
    const observer = new ResizeObserver(measure)
    observer.observe(element)
    for (const row of element.children) observer.observe(row)
    return () => observer.disconnect()
  }, [list, count])

  if (measured !== undefined && measured.height > 0 && measured.centres.length === count) return measured
  return { height: count * pitch, centres: Array.from({ length: count }, (_, at) => (at + 0.5) * pitch) }
}
