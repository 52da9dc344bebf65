import { lowerBound, runsToDemonstrate } from '../numerics/binomial.ts'
import type { Question } from './questions.ts'
import type { Claim, Side } from './sides.ts'
import { USUAL_TERMS } from './terms.ts'

const percent = (share: number) => `${Math.round(share * 100)} %`
const oneIn = (share: number) => `1 in ${Math.round(1 / share).toLocaleString('en-GB')}`

/** A question about one claim; `ask` takes the sizes of all claims that leave the same open. */
interface Open {
  readonly ask: (sizes: string) => string
  readonly because: string
}

const HOW = (speed: number) => (sizes: string) =>
  `How was it obtained: ${sizes}? Show it in our product, in our pack, at ${speed} m/min.`
const WHERE = (sizes: string) => `Where did the piece lie: ${sizes}?`
const RUNS = (sizes: string) => `In how many runs was it found, and how often missed: ${sizes}?`
const RATE = (rate: number) => (sizes: string) =>
  `What is the size at ${oneIn(rate)} false rejects, counted on good packs first: ${sizes}?`

/** What one quoted size leaves open. */
function openIn({ given }: Claim, { point, option }: Side): Open[] {
  const { obtained = 'unknown', position, runs, falseRejectsPerPack } = given
  const enough = runsToDemonstrate(USUAL_TERMS, 0)
  const accepted = point.falseRejectsPerPack
  const open: (Open | false)[] = [
    obtained !== 'in-product' && {
      ask: HOW(point.speedMPerMin),
      because:
        obtained === 'empty'
          ? 'Read with the machine empty; food and pack take part of it away.'
          : 'The quote does not say whether the product was in the machine.',
    },
    !position && {
      ask: WHERE,
      because:
        option.family === 'xray'
          ? 'The thickest place, an edge or a seam finds less than the middle.'
          : 'The centre of the opening finds less than the belt or a wall.',
    },
    (runs === undefined || runs < enough) && {
      ask: RUNS,
      because: runs
        ? `${runs} of ${runs} shows only that at least ${percent(lowerBound(runs, runs, USUAL_TERMS.confidence))} are found, 95 % sure; ${enough} of ${enough} shows 9 in 10.`
        : `Without the number of runs a size shows nothing; ${enough} of ${enough} shows that 9 in 10 are found, 95 % sure.`,
    },
    (falseRejectsPerPack === undefined || falseRejectsPerPack > accepted) && {
      ask: RATE(accepted),
      because: falseRejectsPerPack
        ? `It was quoted at ${oneIn(falseRejectsPerPack)}; we accept ${oneIn(accepted)}, and a stricter threshold finds less.`
        : 'Any machine finds more when it may reject more good packs; the quote does not say how many.',
    },
  ]
  return open.filter((one) => one !== false)
}

/** What the quoted sizes of a machine leave open; what several leave open alike is asked once, with all their sizes. */
export function aboutClaims(side: Side, nameOf: (material: string) => string): Question[] {
  const asked = new Map<string, Open & { sizes: string[] }>()
  for (const claim of side.claims)
    for (const open of openIn(claim, side)) {
      const key = `${open.ask('')} ${open.because}`
      const known = asked.get(key) ?? { ...open, sizes: [] }
      known.sizes.push(`${claim.given.sizeMm} mm of ${nameOf(claim.given.material)}`)
      asked.set(key, known)
    }
  return [...asked.values()].map(({ ask, because, sizes }) => ({ ask: ask(sizes.join(', ')), because }))
}
