import type { Advice, Brief, BriefInput, Machine, Option } from '../../contract/index.ts'
import { isPromised } from '../assess/meets.ts'
import type { AdviseGiven } from './advise-given.ts'
import type { Pair } from './change-targets.ts'
import { type LeverId, type Move, moved } from './lever.ts'
import { leversAt } from './levers.ts'
import { smallestShare, type Trial } from './smallest-share.ts'
import { type Allowance, workOf } from './work.ts'

/** A machine as a brief names it, and its figures. */
export interface Named {
  readonly given: NonNullable<BriefInput['equipment']>[number]
  readonly machine: Machine
}

/** A change that meets a pair when the pair is looked at alone; still to be run with everything. */
export interface Found {
  readonly moves: readonly Move[]
  /** The lever pulled all the way, should the smallest share not hold. */
  readonly whole: readonly Move[]
  readonly pair: Pair
  /** null for a larger size to find. */
  readonly lever: LeverId | null
}

/** How much a change without figures counts beside the logarithm of a factor when changes are put in order. */
const WITHOUT_FIGURES = 1

/** Most that a size to find may grow, as a factor (judgement). */
const LARGEST_ASKED = 2

/** A brief of one pair only: its point, its machine, its contaminant. Paths of the moves follow. */
function narrowed(given: BriefInput, pair: Pair, machine: Named['given']): BriefInput {
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

/** What an option shows of one contaminant. */
export function trialOf(option: Option | undefined, contaminant: number): Trial {
  const finding = option?.findings.find((f) => f.contaminant === contaminant)
  const suits = option !== undefined && !['not-suitable', 'no-build'].includes(option.verdict)
  const promised = finding?.cautiousMm != null && finding.mustFindMm !== null
  const ratio = promised ? finding.cautiousMm! / finding.mustFindMm! : Number.POSITIVE_INFINITY
  return { met: suits && finding !== undefined && isPromised(finding.meets), ratio }
}

/** A larger size to find, where neither law nor injury sets it: the size that can be promised, rounded up. */
function askedSize(brief: Brief, pair: Pair): Move[] | null {
  const { basis, mustFindMm } = brief.contaminants[pair.contaminant]!
  const cautious = pair.option.findings.find((f) => f.contaminant === pair.contaminant)?.cautiousMm
  if (mustFindMm === null || cautious == null || basis === 'law' || basis === 'injury') return null
  const to = Math.ceil(cautious * 10) / 10
  const path = `contaminants.${pair.contaminant}.mustFindMm`
  return to <= mustFindMm * LARGEST_ASKED ? [{ path, from: mustFindMm, to }] : null
}

/** How large a change is: the largest factor in it, as a logarithm. */
export const sizeOf = (moves: readonly Move[]): number =>
  Math.max(
    ...moves.map(({ from, to }) =>
      typeof from === 'number' && typeof to === 'number' ? Math.abs(Math.log(to / from)) : WITHOUT_FIGURES,
    ),
  )

/** Every lever of a pair pulled as little as meets it, the pair looked at alone; a larger size where nothing there meets this one. */
export async function changesFor(
  brief: Brief,
  { options }: Pick<Advice['points'][number], 'options'>,
  pair: Pair,
  named: Named,
  advise: AdviseGiven,
  allowance: Allowance,
): Promise<Found[]> {
  const alone = narrowed(brief.given, pair, named.given)
  const tryOut = async (moves: readonly Move[]) => {
    if (!allowance.take(workOf(named.machine.family, 1))) return null
    const advice = await advise(moved(alone, atFirstPoint(moves)))
    return trialOf(advice?.points[0]?.options[0], 0)
  }
  const isMet = options.some((option) => trialOf(option, pair.contaminant).met)
  const larger = isMet ? null : askedSize(brief, pair)
  const found: Found[] = larger ? [{ moves: larger, whole: larger, pair, lever: null }] : []
  for (const lever of leversAt(brief.points[pair.point]!, pair.point, named.machine)) {
    const moves = await smallestShare(lever, trialOf(pair.option, pair.contaminant), tryOut)
    if (moves) found.push({ moves, whole: lever.at(1), pair, lever: lever.id })
  }
  return found
}
