/** Characters of a person's own words that a sentence repeats. */
const MOST = 60

/** What was given, as a sentence may quote it: text in quotes and cut short, never a whole document. */
export function quoted(given: unknown): string {
  if (given === undefined) return 'nothing'
  if (typeof given === 'string') return JSON.stringify(shortened(given))
  if (Array.isArray(given)) return given.length === 0 ? 'an empty list' : `a list of ${given.length}`
  if (typeof given === 'object' && given !== null) return 'a group of values'
  return String(given)
}

/** The beginning of a text, with … where more follows. */
export function shortened(text: string, most = MOST): string {
  return text.length <= most ? text : `${text.slice(0, most - 1)}…`
}
