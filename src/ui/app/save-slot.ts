/** The save state as an element, so that the frame and the bench's own bar show the same one. */
import type { ReactNode } from 'react'
import { createContext, useContext } from 'react'

export const SaveSlot = createContext<ReactNode>(null)
export const useSaveSlot = (): ReactNode => useContext(SaveSlot)
