import type {
  Advice,
  Brief,
  Contaminant,
  ContaminantInput,
  FragmentAnswer,
  FragmentOption,
  Option,
} from '../../contract/index.ts'
import { materials } from '../../reference/index.ts'
import { factsOfTogether, type Placed } from '../answer/facts-two.ts'
import { pairsOf } from '../answer/pairs-of.ts'
import { asItRuns } from '../assess/as-it-runs.ts'
import type { Rulebook } from '../book/rule-schema.ts'
import type { AdviseGiven } from '../change/advise-given.ts'
import { decide } from '../decide/decide.ts'
import { standing } from '../order/order.ts'
import { joined } from '../say/said.ts'
import { nameWords } from '../say/words.ts'
import { becauseOf, fragmentSummary, inPacks, QUESTIONS, settingsText } from './fragment-words.ts'

/** Advice on the piece alone at one point, every machine held at the settings it runs at. */
async function adviceAt(
  brief: Brief,
  point: number,
  options: readonly Option[],
  removals: readonly string[],
  given: ContaminantInput,
  advise: AdviseGiven,
): Promise<Advice['points'][number]> {
  const machines = options.flatMap((option) => asItRuns(brief, point, option) ?? [])
  const described = (id: string) => brief.equipment.find((m) => typeof m !== 'string' && m.id === id) ?? id
  const advice = await advise({
    ...brief.given,
    points: [brief.given.points[point]!],
    contaminants: [given],
    quotes: [],
    equipment: [...machines, ...removals.map(described)],
  })
  return (
    advice?.points[0] ?? { name: '', reasons: [], options: [], removals: [], contrasts: [], closeCall: null }
  )
}

/** Effects that say something of the chance; what a rule asks for or where it sends one comes too late here. */
const SPEAKS: readonly Option['reasons'][number]['type'][] = ['excludes', 'weakens', 'favours', 'warns']

function optionOf(brief: Brief, option: Option, sizeMm: number): FragmentOption {
  const finding = option.findings[0]!
  const exclusion = standing(option).excluded
    ? option.reasons.find((r) => r.type === 'excludes' && r.contaminant === null)
    : undefined
  return {
    equipment: option.equipment,
    label: option.label,
    installed: brief.equipment.length > 0,
    excluded: exclusion?.text ?? '',
    settings: settingsText(option),
    chance: finding.chanceAtMustFind ?? (finding.meets === 'cannot' ? 0 : null),
    chanceAnyOrientation: finding.chanceAnyOrientation,
    meets: finding.meets,
    bestMm: finding.bestMm,
    expectedMm: finding.expectedMm,
    cautiousMm: finding.cautiousMm,
    because: becauseOf(finding, sizeMm),
    rules: option.reasons
      .filter((r) => r.contaminant === 0 && SPEAKS.includes(r.type))
      .map(({ rule, title, text }) => ({ rule, title, text })),
    zones: finding.zones.filter((zone) => zone.canLieThere && zone.state !== 'findable'),
  }
}

/** A machine of the line with its chance of finding the piece. */
interface Reckoned extends Placed {
  readonly option: Option
  readonly chance: number
  readonly equipment: string
}

/** All machines of the line in a row: from all misses alike to all misses independent. */
async function togetherOf(
  brief: Brief,
  uses: readonly Reckoned[],
  book: Rulebook,
): Promise<FragmentAnswer['together']> {
  if (uses.length < 2) return null
  const atLeast = Math.max(...uses.map(({ chance }) => chance))
  const atMost = 1 - uses.reduce((miss, { chance }) => miss * (1 - chance), 1)
  const asked = await Promise.all(
    pairsOf(uses).map(([a, b]) => decide(book, 'together', factsOfTogether(brief, a, b).facts)),
  )
  const words = joined(asked.flat().filter(({ outcome }) => outcome === 'fired'))
  return {
    uses: uses.map(({ point, equipment }) => ({ point: brief.points[point]!.name, equipment })),
    atLeast,
    atMost,
    because: `At least one of them finds it ${inPacks(atLeast)} if all miss the same pieces, ${inPacks(atMost)} if their misses had nothing to do with each other; the truth lies between. ${words}`,
  }
}

/**
 * Would we have found this? The chance of finding a piece of this size at every point and machine of the
 * brief, each machine at the settings it runs at for the brief's own contaminants, with what the chance rests
 * on. The machines taken together are those named in the brief, else those of its combination.
 */
export async function wouldHaveFound(
  brief: Brief,
  piece: Contaminant,
  given: ContaminantInput,
  advise: AdviseGiven,
  book: Rulebook,
): Promise<FragmentAnswer> {
  const line = await advise(brief.given)
  if (!line) throw new Error('the brief of a parsed fragment was refused')
  const alone: Brief = { ...brief, contaminants: [piece] }
  const sizeMm = piece.mustFindMm!
  const points: FragmentAnswer['points'] = []
  const placed: Reckoned[] = []
  for (const [at, { name, options, removals }] of line.points.entries()) {
    const ranked = options.filter((option) => option.rank !== null)
    const upstream = [...new Set(removals.map(({ equipment }) => equipment))]
    const there = await adviceAt(brief, at, ranked, upstream, given, advise)
    const found = there.options.map((option) => optionOf(brief, option, sizeMm))
    const used = (id: string) =>
      brief.equipment.length > 0 ||
      line.combination.uses.some((use) => use.point === name && use.equipment === id)
    for (const [i, { equipment, chance, excluded }] of found.entries())
      if (used(equipment) && chance !== null && excluded === '')
        placed.push({ point: at, option: there.options[i]!, chance, equipment })
    const behind = line.combination.stillEnters[at]?.text ?? ''
    points.push({ name, options: found, removals: there.removals, stillEnters: behind })
  }
  const words = `${nameWords(alone, 0)}, ${sizeMm} mm ${piece.shape === 'sphere' ? 'across' : 'thick'}`
  return {
    fragment: {
      material: piece.material,
      label: materials.get(piece.material)?.label ?? piece.material,
      shape: piece.shape,
      sizeMm,
      lengthMm: piece.lengthMm,
      faceMm2: piece.faceMm2,
      placement: piece.placement,
    },
    summary: fragmentSummary(brief, words.charAt(0).toUpperCase() + words.slice(1), points),
    points,
    together: await togetherOf(brief, placed, book),
    questions: [...QUESTIONS],
    cautions: line.cautions.filter(({ sources }) => sources.length === 0),
    versions: line.versions,
  }
}
