/**
 * Property tests run on the same cases each time, so that a red run is about the change that made it so. `FC_SEED=random`, or
 * a number, tries others; a release run does.
 */
import fc from 'fast-check'

const asked = process.env['FC_SEED'] ?? '20260101'
if (asked !== 'random') fc.configureGlobal({ seed: Number(asked) })
