const long = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long' })

/** The day of printing, e.g. "25 November 2026". */
export const today = () => long.format(new Date())

/** The same day so many months on; the last of a month that is shorter. */
export function dayIn(months: number, from = new Date()): string {
  const day = new Date(from.getFullYear(), from.getMonth() + months, 1)
  const last = new Date(day.getFullYear(), day.getMonth() + 1, 0).getDate()
  day.setDate(Math.min(from.getDate(), last))
  return long.format(day)
}
