/** Imported first: without it zod compiles its schemas with `new Function`, which the content security policy forbids. */
import { config } from 'zod/mini'

config({ jitless: true })
