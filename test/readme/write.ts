/** Draws the picture of the README and puts what the program prints into its terminal session (npm run readme). */
import { readFileSync, writeFileSync } from 'node:fs'
import { PICTURE, README, SESSION, shownInReadme } from './readme.ts'

const { picture, session } = await shownInReadme()
writeFileSync(PICTURE, picture)
const text = readFileSync(README, 'utf8')
writeFileSync(
  README,
  text.replace(
    SESSION,
    (_, begin: string, _lines: string, _was: string, end: string) => begin + session + end,
  ),
)
