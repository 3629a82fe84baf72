/** Text whose digits are neither computed nor read: a name, a code, a counter, a day, a rule of the shop. */
import type { ReactNode } from 'react'

export const Label = ({ children }: { children: ReactNode }) => <span data-label="">{children}</span>
