import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { PICTURE, README, SESSION, shownInReadme } from './readme.ts'

const shown = shownInReadme()

it('the picture in the README is what the program draws now (npm run readme draws it anew)', async () => {
  expect(readFileSync(PICTURE, 'utf8')).toBe((await shown).picture)
  expect(readFileSync(README, 'utf8')).toContain('(test/readme/answer.svg)')
})

it('the terminal session in the README is what the program prints now', async () => {
  expect(SESSION.exec(readFileSync(README, 'utf8'))?.[3]).toBe((await shown).session)
})
