import { coverageOf, DESIGNS, falseDisagreement, promisedAndGiven, signalCoverage } from './coverage.ts'

const sets = Number(process.argv[2] ?? 2000)
const share = (value: number) => `${(100 * value).toFixed(1)} %`.padStart(8)

console.log(`${sets} simulated trials of each design; the bound is asked to hold in 95 %`)
console.log('separated | penalised holds | plain holds | printed | printed and wrong')
for (const design of DESIGNS) {
  const c = coverageOf(design, sets, 20261127)
  console.log(
    `${share(c.separated)}  | ${share(c.headline)}        | ${share(c.plain)}    | ${share(c.printed)} | ${share(c.wrong)}   ${design.words}`,
  )
}
for (const pieces of [12, 20, 40])
  console.log(`${share(signalCoverage(pieces, sets, 20261127))} by the signal of ${pieces} pieces`)
for (const [perSize, worseBy] of [
  [10, 0],
  [12, 0],
  [15, 0.05],
  [20, 0.05],
  [30, 0.1],
] as const) {
  const { promised, given } = promisedAndGiven(perSize, worseBy, sets, 20261127)
  console.log(
    `${share(given)} of trials show it where ${share(promised).trim()} was promised: ${perSize} at each of six sizes, sizes ${worseBy * 100} % larger`,
  )
}
const trials = Math.max(40, Math.round(sets / 5))
console.log(
  `${share(falseDisagreement(trials, 20261127))} of ${trials} right predictions are called unlikely (5 % asked)`,
)
