/** Runs tasks side by side while their cores fit, each after those it names, in the order given. */
export interface Task {
  readonly name: string
  readonly cores: number
  readonly after?: readonly string[]
}

export async function schedule<T extends Task>(tasks: readonly T[], cores: number, run: (task: T) => Promise<void>) {
  const waiting = new Set(tasks)
  const open = new Set(tasks.map((task) => task.name))
  let free = cores

  await new Promise<void>((done, fail) => {
    const startWhatFits = (): void => {
      if (open.size === 0) return done()
      for (const task of waiting) {
        const need = Math.min(task.cores, cores)
        if (task.after?.some((name) => open.has(name))) continue
        // A wide one keeps its place: small ones that slip past would keep it waiting to the end.
        if (need > free) return
        waiting.delete(task)
        free -= need
        run(task).then(() => {
          free += need
          open.delete(task.name)
          startWhatFits()
        }, fail)
      }
    }
    startWhatFits()
  })
}
