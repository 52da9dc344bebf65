import { hasPostgres, warnOfNoPostgres } from './databases.ts'
import { killRounds } from './kill-rounds.ts'
import { workKilled } from './work-killed.ts'

/** npm run faults [rounds]: programs that keep, and programs that work on a table, are ended by kill -9 in the middle of it. */
const rounds = Number(process.argv[2] ?? 100)
const seen = await killRounds(rounds)
const lost = seen.filter(({ promised, there }) => there < promised)
const torn = seen.filter(({ whole }) => !whole)
const saves = seen.at(-1)!.there
console.log(
  `${rounds} rounds, ${saves} saves: ${lost.length} lost a promised save, ${torn.length} left a torn one`,
)
let wrong = lost.length + torn.length
warnOfNoPostgres()
if (hasPostgres) {
  const { rows, killed, products, bad, inOrder } = await workKilled(10 * rounds, rounds)
  console.log(
    `a table of ${rows} products, ${killed} programs at work on it ended: ${products} came out, ${inOrder ? 'in order' : 'NOT in order'}, ${bad} could not be worked out`,
  )
  wrong += products === rows && inOrder && bad === 0 ? 0 : 1
}
process.exitCode = wrong > 0 ? 1 : 0
