import { expect, it } from 'vitest'
import { attackAddress } from './addresses.ts'
import { stream } from './mutate.ts'

const CASES = 250

it('hostile fields at every address are answered or refused in words', async () => {
  const found: string[] = []
  for (let seed = 1; seed <= CASES; seed++) found.push(...(await attackAddress(stream(seed))))
  expect(found).toEqual([])
}, 240_000)
