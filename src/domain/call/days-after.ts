/** Calendar days are counted without a clock and without a time zone. ISO days in, ISO days out. */
const MS_PER_DAY = 86_400_000
const timeOf = (day: string) => Date.parse(`${day}T00:00:00Z`)

/** The day so many days later; `days` may be below zero. */
export const daysAfter = (day: string, days: number): string =>
  new Date(timeOf(day) + days * MS_PER_DAY).toISOString().slice(0, 10)

/** How many days `to` lies after `from`; below zero when it lies before. */
export const daysBetween = (from: string, to: string): number => Math.round((timeOf(to) - timeOf(from)) / MS_PER_DAY)
