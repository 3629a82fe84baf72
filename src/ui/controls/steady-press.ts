/**
 * For an action below fields. A press takes the focus from a field; if that brings up an error line, the action moves from under
 * the finger and the press is lost. So the press leaves the focus where it is, and the click leaves the field first.
 */
import type { MouseEvent } from 'react'

export const steadyPress = {
  onMouseDown: (event: MouseEvent) => event.preventDefault(),
  onClickCapture: ({ currentTarget }: MouseEvent) => {
    const at = document.activeElement
    if (at instanceof HTMLElement && !currentTarget.contains(at)) at.blur()
  },
}
