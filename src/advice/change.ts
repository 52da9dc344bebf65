import type { Advice, Brief, BriefInput, Option } from '../contract/index.ts'
import { type Lever, leversAt, type Move, moved } from './levers.ts'
import { contaminantWords } from './why-not.ts'

/** Advice on a brief as given, or null when the brief is refused. Handed in: the whole of physics and rules. */
export type AdviseGiven = (given: BriefInput) => Promise<Advice | null>

/** Changes shown at most, and pairs of machine and contaminant looked into. */
const MOST_CHANGES = 5
const MOST_PAIRS = 4
const BISECTIONS = 6

interface Pair {
  readonly point: number
  readonly option: Option
  readonly contaminant: number
}

/** What stands between a point and its best fit: the sizes missed by the first option, nearest first. */
function blockingPairs(points: Advice['points']): Pair[] {
  return points.flatMap(({ options }, point): Pair[] => {
    const target = options.find(
      (o) => o.rank !== null && o.verdict !== 'not-suitable' && o.verdict !== 'best-fit',
    )
    if (!target) return []
    const gap = (f: Option['findings'][number]) =>
      (f.cautiousMm ?? f.expectedMm ?? Number.POSITIVE_INFINITY) / f.mustFindMm!
    return target.findings
      .filter((f) => f.meets === 'no' || f.meets === 'maybe')
      .sort((a, b) => gap(a) - gap(b))
      .map((f) => ({ point, option: target, contaminant: f.contaminant }))
  })
}

/** A brief of one pair only: its point, its machine, its contaminant. Paths of the moves follow. */
function narrowed(
  given: BriefInput,
  pair: Pair,
  machine: NonNullable<BriefInput['equipment']>[number],
): BriefInput {
  return {
    ...given,
    points: [given.points[pair.point]!],
    contaminants: [given.contaminants[pair.contaminant]!],
    equipment: [machine],
    quotes: [],
  }
}

const atFirstPoint = (moves: readonly Move[]): Move[] =>
  moves.map((move) => ({ ...move, path: move.path.replace(/^points\.\d+/, 'points.0') }))

const meetsIt = (advice: Advice | null) =>
  advice?.points[0]?.options[0]?.findings[0]?.meets === 'yes' &&
  advice.points[0].options[0].verdict !== 'not-suitable'

/** Smallest share of a lever at which the pair is met, or null when even all of it does not do. */
async function smallestShare(
  lever: Lever,
  holds: (moves: Move[]) => Promise<boolean>,
): Promise<Move[] | null> {
  if (!(await holds(lever.at(1)))) return null
  let low = 0
  let high = 1
  for (let k = 0; k < BISECTIONS; k++) {
    const middle = (low + high) / 2
    if (await holds(lever.at(middle))) high = middle
    else low = middle
  }
  return lever.at(high)
}

/** A larger size to find, where neither law nor injury sets it: the size that can be promised, rounded up. */
function askedSize(brief: Brief, pair: Pair): Move[] | null {
  const { basis, mustFindMm } = brief.contaminants[pair.contaminant]!
  const cautious = pair.option.findings.find((f) => f.contaminant === pair.contaminant)?.cautiousMm
  if (mustFindMm === null || cautious == null || basis === 'law' || basis === 'injury') return null
  const to = Math.ceil(cautious * 10) / 10
  return to <= mustFindMm * 2
    ? [{ path: `contaminants.${pair.contaminant}.mustFindMm`, from: mustFindMm, to }]
    : null
}

const sizeOf = (moves: readonly Move[]) =>
  Math.max(...moves.map(({ from, to }) => Math.abs(Math.log(to / from))))

/**
 * Up to five smallest changes of what a person can act on that make the first option of a point meet a size it
 * misses: found by bisection through physics and rules, then run again with everything that the option must
 * find before it is shown. `machineOf` gives the machine of an option as a brief names it.
 */
export async function whatWouldChange(
  brief: Brief,
  points: Advice['points'],
  machineOf: (equipment: string) => NonNullable<BriefInput['equipment']>[number],
  advise: AdviseGiven,
): Promise<Pick<Advice, 'changes' | 'changesNote'>> {
  const pairs = blockingPairs(points).slice(0, MOST_PAIRS)
  const found: { moves: Move[]; pair: Pair; words: string }[] = []
  for (const pair of pairs) {
    const machine = machineOf(pair.option.equipment)
    const alone = narrowed(brief.given, pair, machine)
    const holds = async (moves: Move[]) => meetsIt(await advise(moved(alone, atFirstPoint(moves))))
    for (const lever of leversAt(brief.points[pair.point]!, pair.point)) {
      const moves = await smallestShare(lever, holds)
      if (moves) found.push({ moves, pair, words: lever.words })
    }
    const larger = askedSize(brief, pair)
    if (larger) found.push({ moves: larger, pair, words: 'a larger size to find' })
  }
  found.sort((a, b) => sizeOf(a.moves) - sizeOf(b.moves))
  const shown = new Set<string>()
  const changes: Advice['changes'] = []
  for (const { moves, pair, words } of found) {
    const kind = `${moves.map((move) => move.path).join()} ${pair.contaminant}`
    if (changes.length === MOST_CHANGES || shown.has(kind)) continue
    shown.add(kind)
    const machine = machineOf(pair.option.equipment)
    const again = await advise({ ...moved(brief.given, moves), equipment: [machine] })
    const option = again?.points[pair.point]?.options[0]
    if (option?.findings[pair.contaminant]?.meets !== 'yes') continue
    changes.push({
      inputs: moves,
      effect: `${pair.option.label} then meets ${contaminantWords(brief, pair.contaminant)} (${words})`,
      verified: true,
    })
  }
  const changesNote =
    pairs.length === 0
      ? 'Nothing is missed that a change of the line could bring within reach.'
      : changes.length === 0
        ? 'No change of belt speed, bed depth, false rejects or size to find brings a missed size within reach.'
        : ''
  return { changes, changesNote }
}
