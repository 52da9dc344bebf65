/** What a room has predicted so far: it travels in the address, and results are worked out anew from it. */
export interface Done {
  readonly id: string
  /** One per question, in order; "-" where none was made. */
  readonly guesses: readonly string[]
  /** Time a timed exercise took, s; null for the others. */
  readonly seconds: number | null
}

const MOST_CHARACTERS = 4000
const GUESS = /^[a-z0-9.-]{1,40}$/i

/** Reads "id_guess_guess!seconds~id_guess"; what does not fit is left out. */
export function readDone(text: string | undefined): Done[] {
  if (!text || text.length > MOST_CHARACTERS) return []
  return text.split('~').flatMap((part) => {
    const [before = '', time] = part.split('!')
    const [id = '', ...guesses] = before.split('_')
    const seconds = time === undefined ? null : Number(time)
    const fits = /^[a-z0-9-]+$/.test(id) && guesses.length > 0 && guesses.every((guess) => GUESS.test(guess))
    return fits && (seconds === null || (seconds >= 0 && seconds < 1e6)) ? [{ id, guesses, seconds }] : []
  })
}

export function writeDone(done: readonly Done[]): string {
  return done
    .map(
      ({ id, guesses, seconds }) => `${[id, ...guesses].join('_')}${seconds === null ? '' : `!${seconds}`}`,
    )
    .join('~')
}

/** The same with one exercise more; done again, it takes the place of the first time. */
export function withDone(done: readonly Done[], one: Done): Done[] {
  return [...done.filter(({ id }) => id !== one.id), one]
}

/** Guesses so far, as they stand in an address: "a_b". */
export const readGuesses = (text: string | undefined): string[] =>
  (text ?? '')
    .split('_')
    .filter((guess) => GUESS.test(guess))
    .slice(0, 30)
