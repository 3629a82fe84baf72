/** Days and clock times, day before month, the month as a word, in a fixed locale. */
const LOCALE = 'en-GB'
/** A day and a time of day here, as a moment. */
export const momentAt = (isoDay: string, hour: number, minute: number): string => {
  const [year, month, date] = isoDay.split('-').map(Number)
  return new Date(year!, month! - 1, date, hour, minute).toISOString()
}

/** Making a formatter takes a millisecond, so each is made once. */
const made = new Map<string, Intl.DateTimeFormat>()
function format(options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  const key = JSON.stringify(options)
  const formatter = made.get(key) ?? new Intl.DateTimeFormat(LOCALE, options)
  made.set(key, formatter)
  return formatter
}

const day = format({ day: 'numeric', month: 'short', timeZone: 'UTC' })
const dayAndYear = format({ day: 'numeric', month: 'short', year: 'numeric', timeZone: 'UTC' })
const longDay = format({ weekday: 'long', day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' })

/** An ISO day: `9 Dec`. */
export const showDay = (iso: string): string => said(day, `${iso}T00:00:00Z`)
/** `9 Dec 2026`. */
export const showDayAndYear = (iso: string): string => said(dayAndYear, `${iso}T00:00:00Z`)
/** `Wednesday 9 December 2026`, read back to whoever typed a day. */
export const showLongDay = (iso: string): string => said(longDay, `${iso}T00:00:00Z`).replace(',', '')

/** A moment's clock time here: `14:02`. */
export const showClock = (moment: string, timeZone?: string): string =>
  said(format({ hour: '2-digit', minute: '2-digit', hourCycle: 'h23', timeZone }), moment)

/** A moment here: `9 Dec 2026, 14:02`. */
export const showMoment = (moment: string, timeZone?: string): string =>
  said(
    format({
      day: 'numeric',
      month: 'short',
      year: 'numeric',
      hour: '2-digit',
      minute: '2-digit',
      hourCycle: 'h23',
      timeZone,
    }),
    moment,
  )

const isoDays = new Map<string | undefined, Intl.DateTimeFormat>()
function isoDayIn(timeZone: string | undefined): Intl.DateTimeFormat {
  const made = isoDays.get(timeZone) ?? new Intl.DateTimeFormat('en-CA', { timeZone, dateStyle: 'short' })
  isoDays.set(timeZone, made)
  return made
}

/** The calendar day here of a moment, as an ISO day. */
export function dayOfMoment(moment: string, timeZone?: string): string {
  return said(isoDayIn(timeZone), moment)
}

function said(formatter: Intl.DateTimeFormat, text: string): string {
  const time = Date.parse(text)
  return Number.isNaN(time) ? 'no date' : formatter.format(time)
}
