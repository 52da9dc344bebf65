import { expect, it } from 'vitest'
import { DOORS, send } from './doors.ts'
import { faultsIn } from './judge.ts'
import { neededMb } from './memory.ts'
import { hostileText, movedBrief, stream } from './mutate.ts'
import { faultsOfAdvice } from './whole.ts'

const CASES = 500
/** Briefs that go through the whole of the advice, and the most that are made until so many were not refused. */
const THROUGH_ALL = 9
const MOST_MADE = 60
/** What pages and answers that are kept may take beyond a warm start; 400 texts that each leave 100 kB go past it. */
const KEPT_MB = 40

/** Every so many texts go through the door of the report too, which draws a whole one where it takes a text. */
const PER_REPORT = 20

it('2,025 hostile texts (500 through four doors, 25 through a fifth) are taken or refused in words, everywhere alike', async () => {
  const found: string[] = []
  let warm = 0
  for (let seed = 1; seed <= CASES; seed++) {
    if (seed === CASES / 5) warm = neededMb()
    const text = hostileText(stream(seed))
    const came = []
    const doors = seed % PER_REPORT === 0 ? DOORS : DOORS.filter((door) => door !== 'report')
    for (const door of doors) came.push(await send(text, door))
    for (const fault of faultsIn(came)) found.push(`seed ${seed}: ${fault}`)
  }
  expect(found).toEqual([])
  expect(neededMb() - warm, 'MB more than after a fifth').toBeLessThan(KEPT_MB)
}, 240_000)

it('a brief with numbers moved about gets sound advice or a refusal', async () => {
  const found: string[] = []
  let advised = 0
  for (let seed = 1; seed <= MOST_MADE && advised < THROUGH_ALL; seed++) {
    const faults = await faultsOfAdvice(movedBrief(stream(seed)))
    if (faults) advised++
    for (const fault of faults ?? []) found.push(`seed ${seed}: ${fault}`)
  }
  expect(found).toEqual([])
  expect(advised).toBe(THROUGH_ALL)
}, 240_000)
