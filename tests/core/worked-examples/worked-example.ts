import type { Outcome } from '@/core/outcome'

/** Hands the usual number on as it is, or something else in its place: no number, a wild one. */
export type Take = (usual: number) => number

/** Each model once, by the name of its function, with every number that goes in taken by `n`. */
export type WorkedExamples = Readonly<Record<string, (n: Take) => Outcome<unknown>>>
