/** Texts that have broken other programs: markup, formulas, paths, names of JavaScript's own, letters that hide or turn round. */
import { seeded } from './seeded'

const ROOTS: readonly string[] = [
  '<script>ran()</script>',
  '"><img src=x onerror=ran()>',
  "'><svg/onload=ran()>",
  '</textarea></title><iframe srcdoc="<script>parent.ran()</script>">',
  '<a href="javascript:ran()">x</a>',
  'javascript:ran()',
  '<style>*{display:none}</style>',
  '<base href="//evil.example/">',
  '{{ran()}}',
  '${ran()}',
  '<!-- ',
  ']]>',
  '&lt;b&gt;&#x3C;',
  "=cmd|' /C calc'!A0",
  '+1+1',
  '-2+3',
  '@SUM(1)',
  "' OR 1=1 --",
  '../../etc/passwd',
  '%00%0a',
  '__proto__',
  'constructor',
  'toString',
  'null',
  'undefined',
  'NaN',
  '0',
  '1e400',
  '\u202Egnirts',
  'a\u200Bb\u200D\uFEFF',
  'Z\u0353\u0353\u0353\u0353\u0353\u0353',
  'a\u2028b\u2029c',
  '👩‍🚀🏹',
  'ﷺ'.repeat(8),
  '"; window.ran(); "',
  '\\u003cscript\\u003e',
  'x'.repeat(180),
]

/** @param most letters a text may have */
export function hostileStrings(count: number, most: number, seed = 7): readonly string[] {
  const random = seeded(seed)
  const pick = () => ROOTS[Math.floor(random() * ROOTS.length)]!
  return Array.from({ length: count }, (_, n) =>
    Array.from(n < ROOTS.length ? ROOTS[n]! : `${pick()}${pick()} ${n}`)
      .slice(0, most)
      .join('')
      .trim(),
  )
}
