/** The store in the page: one provider at the root, one hook everywhere. */
import type { ReactNode } from 'react'
import { createContext, useContext } from 'react'
import { useStore } from 'zustand'
import type { AppState, AppStore } from '../../state/app-store'

const StoreContext = createContext<AppStore | null>(null)

export const AppProvider = ({ store, children }: { store: AppStore; children: ReactNode }) => (
  <StoreContext value={store}>{children}</StoreContext>
)

/** @throws outside an AppProvider: a fault of the program */
export function useAppStore(): AppStore {
  const store = useContext(StoreContext)
  if (store === null) throw new Error('no AppProvider around this component')
  return store
}

export const useApp = <T,>(select: (state: AppState) => T): T => useStore(useAppStore(), select)
