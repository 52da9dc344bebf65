/** Shortest password: longer is worth more than mixed (NIST SP 800-63B asks for 15 where it is the only factor; M). */
export const LEAST_PASSWORD = 15
const MOST_TEXT = 200

/** What is wrong with a name, or null. */
export const wrongName = (name: string): string | null =>
  /^[^\s\p{C}](?:[^\p{C}]*[^\s\p{C}])?$/u.test(name) && name.length <= 80
    ? null
    : 'Give a name of 1 to 80 characters'

/** What is wrong with a password, or null. */
export const wrongPassword = (password: string): string | null =>
  password.length >= LEAST_PASSWORD && password.length <= MOST_TEXT
    ? null
    : `Give a password of ${LEAST_PASSWORD} to ${MOST_TEXT} characters`
