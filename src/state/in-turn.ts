/** One task after the other, in the order they were asked for; one that fails does not hold up the next. */
export function inTurns(): <T>(task: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve()
  return (task) => {
    const done = last.then(task)
    last = done.catch(() => {})
    return done
  }
}
