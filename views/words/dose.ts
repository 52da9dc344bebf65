const number = new Intl.NumberFormat('en-GB', { maximumSignificantDigits: 2 })

/** "27 µGy" or "0.16 mGy": two digits, as much as a tube's output allows. */
export function doseWords(microGy: number): string {
  return microGy < 100 ? `${number.format(microGy)} µGy` : `${number.format(microGy / 1000)} mGy`
}

/** How many times a dose fits under a ceiling, e.g. "18,000 times less"; two digits, rounded down. */
export function timesBelow(microGy: number, ceilingGray: number): string {
  const times = (ceilingGray * 1e6) / microGy
  if (times <= 1) return 'more'
  const step = 10 ** Math.max(0, Math.floor(Math.log10(times)) - 1)
  return `${number.format(Math.floor(times / step) * step)} times less`
}

/** What set the tube current, in words; keys as the physics names them. */
export const CURRENT_LIMIT_WORDS: Readonly<Record<string, string>> = {
  given: 'the current it is given with',
  power: 'power of the tube',
  current: 'highest current of the tube',
  'count rate': 'count rate the detector bears',
  'full well': 'charge a pixel holds',
}
