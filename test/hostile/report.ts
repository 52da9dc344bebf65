/**
 * The standing attack at length (npm run hostile [texts] [first seed]): hostile texts through every door, hostile fields
 * at every address, moved briefs through the whole of advise, what was found, what the doors answered, the longest answer and the memory before and
 * after. Exit 1 where anything was found.
 */
import { attackAddress } from './addresses.ts'
import { DOORS, send } from './doors.ts'
import { faultsIn } from './judge.ts'
import { neededMb } from './memory.ts'
import { hostileText, movedBrief, stream } from './mutate.ts'
import { faultsOfAdvice } from './whole.ts'

const TEXTS = Number(process.argv[2] ?? 5000)
const FIRST = Number(process.argv[3] ?? 1)
/** One address with hostile fields for so many texts. */
const PER_ADDRESS = 4
/** One moved brief through advise for so many texts. */
const PER_ADVICE = 20

const counts = new Map<string, number>()
const found = new Map<string, { times: number; seed: number }>()
let slowest = { ms: 0, what: '' }
let advised = 0

const count = (what: string) => counts.set(what, (counts.get(what) ?? 0) + 1)
function tell(seed: number, fault: string) {
  const kind = fault.replace(/\d[\d.]*/g, '#')
  const before = found.get(kind)
  if (!before) console.log(`seed ${seed}: ${fault.slice(0, 300)}`)
  found.set(kind, { times: (before?.times ?? 0) + 1, seed: before?.seed ?? seed })
}
async function timed<T>(what: string, work: () => Promise<T>): Promise<T> {
  const start = performance.now()
  const done = await work()
  const ms = performance.now() - start
  if (ms > slowest.ms) slowest = { ms, what }
  return done
}
/** What may be kept beyond a warm start, MB: the stores of answers, pages and cards are bounded below it. */
const KEPT_MB = 150

let warm = 0
for (let seed = FIRST; seed < FIRST + TEXTS; seed++) {
  const text = hostileText(stream(seed))
  const came = []
  for (const door of DOORS) came.push(await timed(`seed ${seed} by ${door}`, () => send(text, door)))
  for (const { door, status } of came) count(`${door} ${status}`)
  for (const fault of faultsIn(came)) tell(seed, fault)
  if (seed % PER_ADDRESS === 0) {
    count('address with hostile fields')
    const faults = await timed(`seed ${seed} at an address`, () => attackAddress(stream(seed)))
    for (const fault of faults) tell(seed, fault)
  }
  if (seed % PER_ADVICE === 0) {
    const faults = await timed(`seed ${seed} advised`, () => faultsOfAdvice(movedBrief(stream(seed))))
    count(faults ? 'advice given' : 'advice refused')
    if (faults) advised++
    for (const fault of faults ?? []) tell(seed, fault)
  }
  if (seed === FIRST + Math.floor(TEXTS / 5)) warm = neededMb()
}

console.log(
  `${TEXTS} texts from seed ${FIRST}, through ${DOORS.length} doors (${TEXTS * DOORS.length} cases); ${advised} advised in full`,
)
for (const [what, times] of [...counts].sort()) console.log(`  ${what}: ${times}`)
console.log(`  longest: ${slowest.ms.toFixed(0)} ms, ${slowest.what}`)
const end = neededMb()
if (end - warm > KEPT_MB) tell(FIRST + TEXTS, `memory grows: more than ${KEPT_MB} MB beyond a warm start`)
console.log(`  memory needed: ${warm.toFixed(0)} MB after a fifth, ${end.toFixed(0)} MB at the end`)
console.log(`  found: ${found.size} kinds`)
process.exitCode = found.size > 0 ? 1 : 0
