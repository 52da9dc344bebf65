const long = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long' })

/** The day of printing, e.g. "25 November 2026". */
export const today = () => long.format(new Date())
