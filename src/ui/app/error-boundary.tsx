/** What a programmer broke, shown where it broke; everything saved stays saved, and the way out is on the page. */
import type { ReactNode } from 'react'
import { Component } from 'react'
import { Button } from '../controls/button'
import look from './error-boundary.module.css'

interface Props {
  children: ReactNode
  /** A change of it, such as another address, clears the error. */
  at: string
}
interface State {
  error: Error | null
  at: string
}

export class ErrorBoundary extends Component<Props, State> {
  override state: State = { error: null, at: this.props.at }

  static getDerivedStateFromError(error: unknown): Partial<State> {
    return { error: error instanceof Error ? error : new Error(String(error)) }
  }

  static getDerivedStateFromProps(props: Props, state: State): Partial<State> | null {
    return props.at === state.at ? null : { error: null, at: props.at }
  }

  override render() {
    const { error } = this.state
    if (error === null) return this.props.children
    return (
      <div className={look.broken} role="alert">
        <h1>This page has failed</h1>
        <p>
          What was saved is still saved. The fault is in the app, not in what was entered. Reload, or go on elsewhere;
          the text below helps whoever mends it.
        </p>
        <pre className={look.detail} data-label="">
          {error.stack ?? error.message}
        </pre>
        <Button kind="primary" onClick={() => location.reload()}>
          Reload
        </Button>
      </div>
    )
  }
}
