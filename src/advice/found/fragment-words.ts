import type { Brief, Finding, FragmentAnswer, FragmentOption, Option } from '../../contract/index.ts'
import { mm } from '../say/words.ts'

/** A chance as packs, without a certainty the model cannot have. */
export function inPacks(chance: number): string {
  if (chance > 0.999) return 'in nearly every pack'
  if (chance < 0.001) return 'in hardly any pack'
  const hundred = chance * 100
  if (hundred >= 99 || hundred < 1) return `in about ${Math.round(chance * 1000)} of 1000 packs`
  return `in about ${Math.round(hundred)} of 100 packs`
}

/** What the chance of one machine rests on: the sizes around the piece, and what limits them. */
export function becauseOf(finding: Finding, sizeMm: number): string[] {
  const { bestMm, expectedMm, cautiousMm, note, widest } = finding
  if (bestMm === null || expectedMm === null) return note ? [note] : []
  const promise = cautiousMm === null ? 'no size can be promised' : `safe to promise from ${mm(cautiousMm)}`
  const sizes = `Nine in ten are expected to be found from ${mm(expectedMm)} (${promise}); this piece has ${mm(sizeMm)}.`
  const below = sizeMm < bestMm ? `Below ${mm(bestMm)} nothing of this build finds it nine times in ten.` : ''
  const wide = widest ? `What widens the range most: ${widest}.` : ''
  return [sizes, below, note, wide].filter((text) => text !== '')
}

/** The settings a machine runs at, "60 kV, 10 mA" or "100, 300 kHz". */
export function settingsText({ settings }: Pick<Option, 'settings'>): string {
  const parts = [
    settings.kV === null ? '' : `${settings.kV} kV`,
    settings.mA === null ? '' : `${Number(settings.mA.toPrecision(2))} mA`,
    settings.frequenciesKHz.length === 0 ? '' : `${settings.frequenciesKHz.join(', ')} kHz`,
  ]
  return parts.filter((part) => part !== '').join(', ')
}

/** What no chance tells: asked before anybody is blamed. */
export const QUESTIONS: readonly string[] = [
  'Was the machine on, at this product’s setting, and did its check before and after that pack pass?',
  'Is the rejected pack accounted for, or can it have come back to the line?',
  'Did the pack pass this machine at all: sample, rework, hand-packed, re-packed?',
  'Can the piece have entered behind the machine, at the customer, or at the table?',
  'Is the material certain? A small piece of another glass, bone or steel may be found at another size.',
]

type Point = FragmentAnswer['points'][number]

/** The answer in a sentence or two: the best of the machines of the line, or of those that could stand there. */
export function fragmentSummary(brief: Brief, piece: string, points: readonly Point[]): string {
  const installed = brief.equipment.length > 0
  const rows = points.flatMap(({ name, options }) => options.map((option) => ({ name, option })))
  const able = rows.filter(({ option }) => option.excluded === '' && option.chance !== null)
  if (able.length === 0)
    return `${piece}: no machine ${installed ? 'of this line' : 'compared here'} has a computed chance of finding it.`
  const best = able.reduce((a, b) => (chanceOf(b.option) > chanceOf(a.option) ? b : a))
  const where = `${best.option.label} at “${best.name}”`
  const whose = installed ? 'of the machines named in the brief' : 'of the machines that could stand there'
  return `${piece}: ${whose}, ${where} would find it ${inPacks(chanceOf(best.option))} as computed, in the worst place it can lie.`
}

const chanceOf = (option: FragmentOption) => option.chance ?? 0
