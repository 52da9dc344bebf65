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
import { factsOfTogether, type Placed, placedAt } from '../answer/facts-two.ts'
import { pairsOf } from '../answer/pairs-of.ts'
import { asItRuns } from '../assess/as-it-runs.ts'
import type { Rulebook } from '../book/rule-schema.ts'
import type { AdviseGiven } from '../change/advise-given.ts'
import { standing } from '../order/order.ts'
import { joined, saidOf } from '../say/said.ts'
import { nameWords } from '../say/words.ts'
import type { LineOutcome } from '../stages.ts'
import { type PieceAsker, pieceAsker } from './ask-found.ts'
import { type Chance, factsOfFinder, factsOfFound } from './facts-found.ts'
import { settingsText } from './fragment-words.ts'

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

function optionOf(brief: Brief, option: Option, said: readonly LineOutcome[]): FragmentOption {
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
    because: [...said.map(({ text }) => text), finding.note].filter((text) => text !== ''),
    grounds: said.map(saidOf),
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

/** The chance that at least one machine finds it: as if all missed the same pieces, and as if independently. */
interface Sum {
  readonly atLeast: number
  readonly atMost: number
}

/** All machines of the line in a row: from all misses alike to all misses independent. */
function togetherOf(uses: readonly Reckoned[]): Sum | null {
  if (uses.length < 2) return null
  const atLeast = Math.max(...uses.map(({ chance }) => chance))
  const atMost = 1 - uses.reduce((miss, { chance }) => miss * (1 - chance), 1)
  return { atLeast, atMost }
}

/** Whether the misses of each two of them multiply, in the words of the rules. */
async function pairsInWords(
  brief: Brief,
  uses: readonly Reckoned[],
  { ask }: PieceAsker,
): Promise<LineOutcome[]> {
  const said: LineOutcome[] = []
  for (const [a, b] of uses.length < 2 ? [] : pairsOf(uses)) {
    const place = { pointIndex: b.point, equipment: b.equipment, beside: placedAt(a) }
    said.push(...(await ask('together', factsOfTogether(brief, a, b), place)))
  }
  return said
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
  const able: Chance[] = []
  const asker = pieceAsker(book, brief)
  for (const [at, { name, options, removals }] of line.points.entries()) {
    const ranked = options.filter((option) => option.rank !== null)
    const upstream = [...new Set(removals.map(({ equipment }) => equipment))]
    const there = await adviceAt(brief, at, ranked, upstream, given, advise)
    const found: FragmentOption[] = []
    for (const option of there.options) {
      const { equipment, findings } = option
      const facts = factsOfFinder(brief, { point: at, equipment }, findings[0]!, sizeMm)
      const said = await asker.ask('finder', facts, { pointIndex: at, equipment })
      found.push(optionOf(brief, option, said))
    }
    for (const { label, chance, excluded } of found)
      if (chance !== null && excluded === '') able.push({ label, point: name, chance })
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
  const sum = togetherOf(placed)
  const unit = brief.points.at(-1)!.stage === 'packed' ? 'packs' : 'portions'
  const said = await asker.ask('found', factsOfFound(brief, { words, piece, unit, able, together: sum }), {})
  const pairs = await pairsInWords(brief, placed, asker)
  const saying = (wanted: LineOutcome['type']) => said.filter(({ type }) => type === wanted)
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
    summary: joined(saying('tells')),
    points,
    together: sum && {
      uses: placed.map(({ point, equipment }) => ({ point: brief.points[point]!.name, equipment })),
      ...sum,
      because: joined([...saying('multiplies'), ...pairs]),
    },
    questions: saying('asks').map(({ text }) => text),
    grounds: [...said, ...pairs].map(saidOf),
    trace: { rules: [...asker.asked] },
    cautions: line.cautions.filter(({ sources }) => sources.length === 0),
    versions: line.versions,
  }
}
