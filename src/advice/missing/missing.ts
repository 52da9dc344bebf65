import { fieldAt } from '../../brief/form/form-fields.ts'
import { labelOf } from '../../brief/form/form-labels.ts'
import type {
  Advice,
  Assumption,
  Brief,
  FactValues,
  Finding,
  Machine,
  Missing,
} from '../../contract/index.ts'
import type { AdviseGiven } from '../change/advise-given.ts'
import { withValue } from '../change/with-value.ts'
import { Allowance, workOf } from '../change/work.ts'
import { joined, saidOf } from '../say/said.ts'
import { nameWords, wordList } from '../say/words.ts'
import type { AskFound } from '../stages.ts'
import { type Effect, effectOf } from './missing-effect.ts'
import { conductivityOf, feeling, worthTrying } from './missing-order.ts'
import { briefAt, pathAt, type Stand, standsOf } from './missing-trial.ts'
import { type Open, unknownInputs } from './missing-unknown.ts'

/** Work allowed in all. */
const MOST_WORK = 28
/** A rule that starts or stops to speak counts as this share of a turned verdict (judgement). */
const RULE_SHARE = 0.05
/** Below this score a value is not worth a question (judgement). */
const LEAST_SCORE = 0.02
const MOST_SHOWN = 8

/** Fields whose value nobody would enter to sharpen an advice. */
const NOT_ASKED = ['name', 'stage', 'basis', 'shape', 'placement', 'severity', 'likelihood']

const CHOICES: Readonly<Record<string, readonly string[]>> = {
  market: ['US', 'EU', 'UK'],
  consumer: ['infants', 'elderly-or-patients', 'animals'],
  outline: ['cylinder'],
}

/** Other values an assumed one might have: the ends of its range, the other answer, the other choices. */
function othersOf({ path, value, range }: Assumption): readonly (number | string | boolean)[] {
  if (range) return range.filter((end) => end !== value)
  if (typeof value === 'boolean') return [!value]
  return typeof value === 'string' ? (CHOICES[path.split('.').at(-1)!] ?? []) : []
}

/** Values of the whole brief move no size; rules alone ask for them. */
const isOfRules = ({ path }: Assumption) => !/product\.|^points|^contaminants/.test(path)

const valueText = (value: number | string | boolean) =>
  typeof value === 'number'
    ? String(Number(value.toPrecision(3)))
    : value === true
      ? 'yes'
      : value === false
        ? 'no'
        : value

interface Tried {
  readonly stand: Stand
  readonly value: number | string | boolean
  readonly effect: Effect
}

const scoreOf = ({ turned, meanLog, rules }: Effect) => turned.length + meanLog + RULE_SHARE * rules.length

/** A value with the unit of its field: "16.3 mm". */
function measured(path: string, value: number | string | boolean): string {
  const field = fieldAt(path)
  return field?.kind === 'measure' && field.unit ? `${valueText(value)} ${field.unit}` : valueText(value)
}

const HOW: Readonly<Record<Finding['meets'], string>> = {
  yes: 'meets',
  partly: 'meets, but for places,',
  maybe: 'may meet',
  no: 'does not meet',
  cannot: 'does not meet',
  open: 'does not meet',
}

/** What a value may do, by the most telling of its trials, as the rules are asked. */
function effectValues(brief: Brief, path: string, tried: readonly Tried[]): FactValues {
  const turns = tried.flatMap(({ stand, value, effect }) =>
    effect.turned.map(({ option, finding }) => {
      const piece = nameWords(brief, stand.contaminants[finding.contaminant]!)
      const how = HOW[finding.meets]
      return `at ${measured(path, value)}, ${option.label} ${how} ${piece}`
    }),
  )
  if (turns.length > 0)
    return { 'missing.kind': 'turns', 'missing.turns': wordList([...new Set(turns)].slice(0, 3)) }
  const moved = tried.reduce((a, b) => ((b.effect.most?.factor ?? 1) > (a.effect.most?.factor ?? 1) ? b : a))
  const { most } = moved.effect
  if (most && most.factor > 1.01)
    return {
      'missing.kind': 'moves',
      'missing.piece': nameWords(brief, moved.stand.contaminants[most.finding.contaminant]!),
      'missing.machine': most.option.label,
      'missing.movesPct': Math.round(100 * (most.factor - 1)),
      'missing.value': measured(path, moved.value),
    }
  const rules = [...new Set(tried.flatMap(({ effect }) => effect.rules))]
  return { 'missing.kind': 'words', 'missing.ruleNames': wordList(rules.slice(0, 3)) }
}

/** A value in the words of the rules. */
async function inWords({ path, score, values }: Open, ask: AskFound): Promise<Missing> {
  const nowhere = { pointIndex: null, equipment: null, contaminant: null }
  const said = await ask({ ground: 'missing', ...nowhere, beside: path }, values)
  return { path, label: labelOf(path), score, effect: joined(said), grounds: said.map(saidOf) }
}

interface Job {
  readonly assumption: Assumption
  readonly stand: Stand
  /** Its path in the brief cut down to the stand. */
  readonly path: string
}

/** What is tried out and where: every assumption at every point it holds for, in the order it is worth it. */
function jobsOf(
  brief: Brief,
  stands: readonly Stand[],
  known: Pick<Advice['trace'], 'facts'>,
  isCoil: (equipment: string) => boolean,
): Job[] {
  const assumed = [...brief.assumed, ...conductivityOf(brief, known)].filter(
    ({ path }) => !NOT_ASKED.includes(path.split('.').at(-1)!),
  )
  const jobs = assumed.flatMap((assumption) =>
    stands.flatMap((whole) => {
      const path = pathAt(whole, assumption.path)
      const stand = path === null ? null : feeling(assumption.path, whole, isCoil)
      if (path === null || stand === null) return []
      return [
        { job: { assumption, stand, path }, worth: worthTrying(assumption, stand, whole.closest, known) },
      ]
    }),
  )
  return jobs.sort((a, b) => b.worth - a.worth).map(({ job }) => job)
}

/**
 * What the brief does not say, by how much it could change the advice. Every assumed value is moved over its
 * stated range through physics and rules, on the leading machines and the closest sizes of each point; what
 * is not known at all is scored by the rules it leaves open. The score of a value is the number of answers it
 * turns, plus the mean move of the sizes as a natural logarithm, plus a small share for each rule that starts
 * or stops to speak; the larger end counts. `ask` has the rules word it.
 */
export async function missingInputs(
  brief: Brief,
  points: Advice['points'],
  trace: Pick<Advice['trace'], 'facts' | 'calculations' | 'rules'>,
  advise: AdviseGiven,
  ask: AskFound,
): Promise<Missing[]> {
  const allowance = new Allowance(MOST_WORK)
  const stands = standsOf(points)
  const costOf = (stand: Stand) =>
    stand.equipment.reduce((sum, id) => {
      const { family } = points[stand.point]!.options.find((o) => o.equipment === id)!
      return sum + workOf(family as Machine['family'], stand.contaminants.length)
    }, 0)
  const bases = new Map<string, Advice | null>()
  const baseOf = async (stand: Stand) => {
    const key = `${stand.point} ${stand.equipment.join()}`
    if (!bases.has(key))
      bases.set(key, allowance.take(costOf(stand)) ? await advise(briefAt(brief, stand)) : null)
    return bases.get(key)!
  }
  const isCoil = (id: string) =>
    points.some(({ options }) => options.some((o) => o.equipment === id && o.family === 'coil'))
  const tried = new Map<Assumption, Tried[]>()
  for (const { assumption, stand, path } of jobsOf(brief, stands, trace, isCoil)) {
    const base = await baseOf(stand)
    if (!base) continue
    for (const value of othersOf(assumption)) {
      if (!allowance.take(isOfRules(assumption) ? 0 : costOf(stand))) continue
      const advice = await advise(withValue(briefAt(brief, stand), path, value))
      if (!advice) continue
      const effect = effectOf(base, advice)
      tried.set(assumption, [...(tried.get(assumption) ?? []), { stand, value, effect }])
    }
  }
  const scored = [...tried].flatMap(([{ path }, trials]): Open[] => {
    const score = Math.max(...trials.map(({ effect }) => scoreOf(effect)))
    const shown = Number(score.toPrecision(3))
    return score < LEAST_SCORE ? [] : [{ path, score: shown, values: effectValues(brief, path, trials) }]
  })
  const all = [...scored, ...unknownInputs(brief, trace)].sort((a, b) => b.score - a.score)
  const missing: Missing[] = []
  for (const open of all.slice(0, MOST_SHOWN)) missing.push(await inWords(open, ask))
  return missing
}
