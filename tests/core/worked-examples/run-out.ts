import { degrees, inches } from '@/core/quantity'
import { insertTurn } from '@/core/runout/insert-turn'
import { runOutOverSpan } from '@/core/runout/over-span'
import { straightestWindow } from '@/core/runout/straightest-window'
import type { WorkedExamples } from './worked-example'

export const runOutExamples: WorkedExamples = {
  runOutOverSpan: (n) => runOutOverSpan(inches(n(0.003)), inches(n(28)), inches(n(25))),
  straightestWindow: (n) =>
    straightestWindow({
      spun: {
        rawLength: inches(n(32)),
        rearSupport: inches(n(2)),
        frontSupport: inches(n(30)),
        stations: [
          { at: inches(n(6)), tir: inches(n(0.0005)), angle: degrees(n(10)) },
          { at: inches(n(11)), tir: inches(n(0.001)), angle: degrees(n(15)) },
          { at: inches(n(16)), tir: inches(n(0.0015)), angle: degrees(n(20)) },
          { at: inches(n(21)), tir: inches(n(0.0025)), angle: degrees(n(25)) },
          { at: inches(n(26)), tir: inches(n(0.004)), angle: degrees(n(30)) },
        ],
      },
      c2c: inches(n(27.5)),
      worthwhile: inches(n(0.0005)),
    }),
  insertTurn: (n) =>
    insertTurn(
      { tir: inches(n(0.003)), angle: degrees(n(40)) },
      { tir: inches(n(0.004)), angle: degrees(n(100)) },
      n(12),
    ),
}
