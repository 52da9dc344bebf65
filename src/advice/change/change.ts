import type { Advice, Brief } from '../../contract/index.ts'
import { lineUp } from '../assess/line-up.ts'
import { isPromised } from '../assess/meets.ts'
import type { AskFound } from '../stages.ts'
import type { AdviseGiven } from './advise-given.ts'
import { changesOfPoint } from './another-point.ts'
import { changesFor, type Found, type Named, sizeOf, trialOf } from './change-search.ts'
import { blockingPairs, type Pair } from './change-targets.ts'
import { changeOf, changeWords, type FoundChange, noChangeWords } from './found-change.ts'
import { type Move, moved } from './lever.ts'
import { Allowance, workOf } from './work.ts'

/** Changes shown at most, pairs of machine and contaminant looked into, and work allowed. */
const MOST_CHANGES = 5
const MOST_PAIRS = 4
const MOST_WORK = 40

/** How much moving a machine to another point counts beside the logarithm of a factor (judgement). */
const OTHER_POINT = 0.4

interface Shown {
  readonly size: number
  readonly change: FoundChange
}

/** A size to find is the same change whichever machine it was found with. */
const kindOf = ({ moves, pair }: Found) => {
  const ofSize = moves[0]!.path.startsWith('contaminants')
  return `${moves.map(({ path }) => path).join()} ${pair.contaminant} ${ofSize ? '' : pair.option.equipment}`
}

/**
 * Up to five smallest changes of what a person can act on that bring a missed size within reach: the same
 * machine at another point of the brief, or a lever of its own point found through physics and rules. Each is
 * run again with everything the machine must find before it is shown, and shown only if nothing met is lost.
 * `tryOut` is the quicker advice for trials, `advise` the whole one that verifies, `ask` has the rules word it.
 */
export async function whatWouldChange(
  brief: Brief,
  { points, combination: { unmet } }: Pick<Advice, 'points' | 'combination'>,
  advise: AdviseGiven,
  tryOut: AdviseGiven,
  ask: AskFound,
): Promise<Pick<Advice, 'changes' | 'changesNote' | 'changesGrounds'>> {
  const machineOf = ({ point, option }: Pair) => namedIn(brief, point, option.equipment)
  const allowance = new Allowance(MOST_WORK)
  const all = blockingPairs(brief, points, unmet)
  const pairs = all.slice(0, MOST_PAIRS)
  const found: Found[] = []
  for (const pair of pairs)
    found.push(...(await changesFor(brief, points[pair.point]!, pair, machineOf(pair), tryOut, allowance)))
  found.sort((a, b) => sizeOf(a.moves) - sizeOf(b.moves))

  /** The option after the moves, with everything it must find; null where the size is missed or another lost. */
  const after = async (pair: Pair, moves: readonly Move[]) => {
    const { option: before, point, contaminant } = pair
    const named = machineOf(pair)
    if (!allowance.take(workOf(named.machine.family, brief.contaminants.length))) return null
    const again = await advise({ ...moved(brief.given, moves), equipment: [named.given], quotes: [] })
    const option = again?.points[point]?.options[0]
    const lost = before.findings.some(
      (f, i) => isPromised(f.meets) && !isPromised(option?.findings[i]?.meets ?? 'no'),
    )
    return trialOf(option, contaminant).met && !lost ? option! : null
  }

  const shown: Shown[] = targetsOf(pairs).flatMap(({ option, point }) =>
    changesOfPoint(brief, points, option, point).map((change) => ({ size: OTHER_POINT, change })),
  )
  const kinds = new Set<string>()
  for (const one of found) {
    if (shown.length > MOST_CHANGES || kinds.has(kindOf(one))) continue
    for (const moves of one.moves === one.whole ? [one.moves] : [one.moves, one.whole]) {
      const same = `${one.pair.option.equipment} ${JSON.stringify(moves)}`
      if (kinds.has(same)) break
      const option = await after(one.pair, moves)
      if (!option) continue
      kinds.add(kindOf(one)).add(same)
      shown.push({ size: sizeOf(moves), change: changeOf(brief, one, moves, option) })
      break
    }
  }
  const smallest = shown.sort((a, b) => a.size - b.size).slice(0, MOST_CHANGES)
  if (smallest.length === 0)
    return { changes: [], ...(await noChangeWords(all.length, allowance.ranOut, ask)) }
  const changes: Advice['changes'] = []
  for (const { change } of smallest) changes.push(await changeWords(change, ask))
  return { changes, changesNote: '', changesGrounds: [] }
}

/** The machine of an option as the brief names it, with its figures. */
function namedIn(brief: Brief, pointIndex: number, equipment: string): Named {
  const described = brief.equipment.find((m) => typeof m !== 'string' && m.id === equipment)
  const linedUp = lineUp(brief, brief.points[pointIndex]!).find(({ machine }) => machine.id === equipment)!
  return { given: described ?? equipment, machine: linedUp.machine }
}

/** Each machine at each point once. */
function targetsOf(pairs: readonly Pair[]): Pair[] {
  return [...new Map(pairs.map((pair) => [`${pair.point} ${pair.option.equipment}`, pair])).values()]
}
