/** What the coach says of the front glue while it is open. */
import type { GlueAdvice } from '../../core/trim/glue-to-land'
import { inUnit } from '../../core/quantity'
import { showNumber } from './format'

/** What stands over the huge figure. */
export function glueHead({ next }: GlueAdvice): string {
  switch (next) {
    case 'spread':
      return 'glue to put on'
    case 'wipe':
      return 'wipe off'
    case 'add':
      return 'add'
    case 'done':
      return 'on the number, wet'
    case 'question':
      return 'will not land: off by'
  }
}

export function glueWords({ next, chanceUnweighed, over }: GlueAdvice): string {
  switch (next) {
    case 'spread':
      return `Wipe the squeeze-out, then weigh it wet, its own head and nock beside it on the pan. Wiped by eye alone it lands ${showNumber(inUnit(chanceUnweighed, '%'), 0)} times in 100.`
    case 'wipe':
      return 'Wipe a touch off, then weigh again while it is open.'
    case 'add':
      return 'A touch more at the rear of the post, then weigh again while it is open.'
    case 'done':
      return 'Stop: it lands here. Epoxy loses nothing as it cures.'
    case 'question':
      return over > 0
        ? 'Too heavy for a sound joint to mend: less glue would starve the bond. Pull it, clean it and trim, or take it as a deviation.'
        : 'Too light for a sound joint to mend: more glue would only be a blob. Pull it, clean it and mend it with a heavier part, or take it as a deviation.'
  }
}
