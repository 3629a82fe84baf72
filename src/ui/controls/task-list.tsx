/** Tasks that may be taken in any order: each with where it leads and how it stands. */
import type { ReactNode } from 'react'
import { Link } from 'wouter'
import look from './task-list.module.css'

export interface Task {
  readonly key: string
  readonly title: ReactNode
  /** Path within the app: `/job/ID/call`. */
  readonly to: string
  /** How it stands, in a word or two: *complete*, *2 open*. */
  readonly state: ReactNode
  readonly note?: ReactNode
  /** Wants attention. */
  readonly open?: boolean
}

export const TaskList = ({ tasks }: { tasks: readonly Task[] }) => (
  <ul className={look.tasks}>
    {tasks.map((task) => (
      <li key={task.key} className={look.task}>
        <span className={look.words}>
          <Link to={task.to} className={look.title} data-label="">
            {task.title}
          </Link>
          {task.note === undefined ? null : <span className={look.note}>{task.note}</span>}
        </span>
        <span className={task.open ? look.open : look.state} data-label="">
          {task.state}
        </span>
      </li>
    ))}
  </ul>
)
