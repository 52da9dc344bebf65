import type { Comparison } from '../../src/compare/comparison.ts'
import type { PackRow } from '../../src/compare/pack-rows.ts'
import type { Side } from '../../src/compare/sides.ts'
import type { Added, Change, Turn } from '../../src/compare/what-it-adds.ts'
import { capital } from '../words/capital.ts'
import { listed } from '../words/listed.ts'
import { VERDICT_WORDS } from '../words/verdict.ts'

/** Whether the one machine needs the other beside or instead of it, in sentences a buyer can repeat. */
export function addedWords(added: Added, pieces: readonly string[]): string {
  const { over, with: other, gains, losses } = added
  const suited = suitedWords(over, other)
  if (suited !== '') return suited
  const named = (changes: readonly Change[], ...turns: Turn[]) =>
    listed(
      changes.filter(({ turn }) => turns.includes(turn)).map(({ contaminant }) => pieces[contaminant] ?? ''),
    )
  const say = (words: string, sentence: (words: string) => string) => (words === '' ? '' : sentence(words))
  const promised = named(gains, 'promised')
  const expected = named(gains, 'expected')
  const firmer = named(gains, 'firmer')
  const needed = promised !== '' || expected !== '' || firmer !== ''
  const anyAsked = other.findings.some((finding) => finding !== null && finding.mustFindMm !== null)
  return [
    say(
      promised,
      (what) =>
        `${capital(other.called)} is needed for ${what}: ${over.called} does not reach the size you must find, this one is safe to promise.`,
    ),
    say(
      expected,
      (what) =>
        `For ${what} only ${other.called} is expected to reach the size you must find; a test decides.`,
    ),
    say(
      firmer,
      (what) =>
        `${capital(other.called)} is needed if ${what} must be safe to promise: with ${over.called} that is only expected.`,
    ),
    needed
      ? ''
      : anyAsked
        ? `For the sizes you must find ${other.called} is not needed: ${over.called} meets as many.`
        : `No size was asked, so nothing here needs ${other.called}.`,
    say(named(gains, 'as-before'), (what) => `It finds smaller ${what}, below what you asked for.`),
    say(named(gains, 'neither'), (what) => `It comes nearer with ${what}, still not near enough.`),
    say(named(gains, 'no-size-asked'), (what) => `It finds smaller ${what}, of which you asked no size.`),
    say(
      named(losses, 'lost'),
      (what) => `It does not reach the size you must find of ${what}, which ${over.called} does.`,
    ),
    say(
      named(losses, 'weaker'),
      (what) => `It is only expected to reach ${what}, which ${over.called} is safe to promise.`,
    ),
    say(named(losses, 'as-before', 'neither', 'no-size-asked'), (what) => `It finds only larger ${what}.`),
  ]
    .filter(Boolean)
    .join(' ')
}

const isSuited = ({ option }: Side) => option.verdict !== 'not-suitable' && option.verdict !== 'no-build'

/** Where one of the two does not suit at all, that comes before any size; empty where both do. */
function suitedWords(over: Side, other: Side): string {
  const why = ({ called, option }: Side) =>
    `${called}: ${VERDICT_WORDS[option.verdict].words}. ${option.because}`
  if (isSuited(over) && isSuited(other)) return ''
  if (!isSuited(over) && !isSuited(other))
    return `Neither suits. ${capital(why(over))} ${capital(why(other))}`
  return isSuited(other)
    ? `Only one of the two suits: ${other.called}. ${capital(why(over))}`
    : `Only one of the two suits: ${over.called}. ${capital(why(other))}`
}

/** What the second pack makes of one machine. */
export function packWords({ over, with: other, gains, losses }: Added, pieces: readonly string[]): string {
  const named = (changes: readonly Change[], ...turns: Turn[]) =>
    listed(
      changes.filter(({ turn }) => turns.includes(turn)).map(({ contaminant }) => pieces[contaminant] ?? ''),
    )
  const label = capital(over.option.label)
  if (isSuited(over) !== isSuited(other)) {
    const out = isSuited(over) ? other : over
    return `${label} suits only with pack ${isSuited(over) ? 'A' : 'B'}; with ${out.laid.mark} it is ${VERDICT_WORDS[out.option.verdict].words}: ${out.option.because}`
  }
  const parts = [
    [named(gains, 'promised', 'expected'), 'reaches the size you must find of', ', which A does not'],
    [named(gains, 'firmer'), 'makes safe to promise', ''],
    [named(losses, 'lost'), 'no longer reaches the size you must find of', ''],
    [named(losses, 'weaker'), 'leaves only expected', ''],
    [named(gains, 'as-before', 'neither', 'no-size-asked'), 'finds smaller', ''],
    [named(losses, 'as-before', 'neither', 'no-size-asked'), 'finds only larger', ''],
  ].flatMap(([what, does, after]) => (what === '' ? [] : [`${does} ${what}${after}`]))
  return parts.length === 0
    ? `${label}: the pack makes no difference that the model can tell.`
    : `${label}: with pack B it ${listed(parts)}.`
}

/** What says which side is the dearer. */
export function basisWords({ byCost }: Comparison): string {
  const order = byCost.order.map(({ words }) => words).join(', then ')
  if (byCost.basis === 'entered') return `By the yearly cost you entered, from cheap to dear: ${order}.`
  if (byCost.basis === 'burden')
    return `By cost and effort (1 to 5: purchase, upkeep, space, skill), from cheap to dear: ${order}. Enter prices below to go by them.`
  return 'Which is the dearer is not known: cost and effort are the same. Enter prices below.'
}

/** What a comparison says first: of machines whether the dearer is needed, of packs what the second one changes. */
export function comparisonWords(comparison: Comparison, pieces: readonly string[]): string[] {
  const { added, laid, packs } = comparison
  const said =
    laid.length === 2
      ? [packsWords(packs, pieces), ...added.map((one) => packWords(one, pieces))]
      : [
          ...added.map((one) => addedWords(one, pieces)),
          ...(added.length > 0 ? [basisWords(comparison)] : []),
        ]
  return [...new Set(said)]
}

/** What changes for the sizes asked when the second pack is taken. */
export function packsWords(rows: readonly PackRow[], pieces: readonly string[]): string {
  const named = (turn: PackRow['turn']) =>
    listed(rows.filter((row) => row.turn === turn).map(({ contaminant }) => pieces[contaminant] ?? ''))
  const [better, worse] = [named('better'), named('worse')]
  const machines = rows.filter(({ rows: [a, b] }) => a && b && a.equipment !== b.equipment).length
  const parts = [
    better === '' ? '' : `With pack B more can be said of ${better}.`,
    worse === '' ? '' : `With pack B less can be said of ${worse}.`,
    better === '' && worse === '' ? 'Both packs meet the same of what you ask.' : '',
    machines === 0
      ? ''
      : `For ${machines} of ${rows.length} contaminants another machine answers than with pack A.`,
  ]
  return parts.filter(Boolean).join(' ')
}
