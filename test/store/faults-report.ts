import { killRounds } from './kill-rounds.ts'

/** npm run faults [rounds]: a program that keeps is ended by kill -9 in the middle of its saves. */
const rounds = Number(process.argv[2] ?? 100)
const seen = await killRounds(rounds)
const lost = seen.filter(({ promised, there }) => there < promised)
const torn = seen.filter(({ whole }) => !whole)
const saves = seen.at(-1)!.there
console.log(
  `${rounds} rounds, ${saves} saves: ${lost.length} lost a promised save, ${torn.length} left a torn one`,
)
process.exitCode = lost.length + torn.length > 0 ? 1 : 0
