/** Imported first by the worker, as `src/zod-jitless.ts` is by the page: the content security policy holds there too. */
import { config } from 'zod/mini'

config({ jitless: true })
