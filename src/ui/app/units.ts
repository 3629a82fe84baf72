/** Trade or metric view, for every figure and field below it. Records keep trade units whichever is shown. */
import { createContext, useContext } from 'react'
import type { UnitSystem } from '../words/unit-systems'

export const Units = createContext<UnitSystem>('trade')
export const useUnits = (): UnitSystem => useContext(Units)
