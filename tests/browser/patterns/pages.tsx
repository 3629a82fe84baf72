import type { ComponentType } from 'react'
import { BenchPatterns } from './bench-patterns'
import { ControlPatterns } from './control-patterns'
import { FigurePatterns } from './figure-patterns'
import { PrintPatterns } from './print-patterns'

export const PAGES: Readonly<Record<string, ComponentType>> = {
  controls: ControlPatterns,
  figures: FigurePatterns,
  bench: BenchPatterns,
  print: PrintPatterns,
}
