import type { Caution, Point } from '../../contract/index.ts'
import { conductivityRules } from '../../reference/electrical.ts'
import type { CoilFinding, CoilLayer } from '../assessment.ts'
import type { Situation } from '../situation.ts'

/** From these on a wet block's size is an order of magnitude only (comparison with practice). */
const LARGE_WET_BLOCK = { heightShare: 0.4, openingMm: 200 } as const

interface LabelFacts {
  readonly situation: Situation
  readonly point: Point
  readonly layers: readonly CoilLayer[]
  readonly productSignal: boolean
  readonly findings: readonly CoilFinding[]
  readonly frequenciesKHz: readonly number[]
  readonly oversized: boolean
}

/** What a reader must be told beside the sizes of this machine. */
export function coilLabels(facts: LabelFacts): readonly Caution[] {
  const { situation, point, layers, productSignal, findings } = facts
  const { filling, opening, conductivity, arrangement } = situation
  const labels: Caution[] = []
  const label = (id: string, text: string, sources: readonly string[]) =>
    labels.push({ id, text, sources: [...sources] })
  const shortMm = Math.min(opening.heightMm, opening.widthMm)
  if (
    productSignal &&
    filling.heightShare > LARGE_WET_BLOCK.heightShare &&
    shortMm >= LARGE_WET_BLOCK.openingMm
  ) {
    label(
      'order-of-magnitude',
      `The food fills ${Math.round(filling.heightShare * 100)} % of an opening of ${shortMm} mm: order of magnitude only, confirm by trial. Such sizes come out larger than practice sees.`,
      ['coil-residuals', 'coil-calibration'],
    )
  }
  if (layers.some(({ film }) => film)) {
    label(
      'confirm-on-the-bag',
      'Metallised film: the computed sizes are larger than practice sees. Confirm by test on the bag; a measured sheet resistance narrows the range.',
      ['metallised-film-resistance', 'thin-sheet'],
    )
  }
  const coldAsEntered =
    conductivity.state === 'entered' && point.product.temperatureC <= conductivityRules.freezing.startsC
  if (conductivity.state === 'frozen' || conductivity.state === 'partly-frozen' || coldAsEntered) {
    label(
      'frozen-only',
      'Holds while the food stays as cold as stated: a thawed rim conducts like the thawed food. Watch the highest temperature and the longest belt stop.',
      ['frozen-conductivity'],
    )
  }
  if (findings.some(({ missedAgain }) => missedAgain.length > 0)) {
    label(
      'missed-again',
      `At ${facts.frequenciesKHz.join(', ')} kHz some sizes are found and larger ones missed again; test with more than one size of piece.`,
      ['coil-model'],
    )
  }
  if (findings.some(({ frequencyUnsuitable }) => frequencyUnsuitable)) {
    label(
      'frequency-unsuitable-for-iron',
      `${facts.frequenciesKHz.join(', ')} kHz does not suit iron in this product; a lower frequency would.`,
      ['bowler-permeability', 'wait-1951'],
    )
  }
  if (filling.basis === 'full, throughput not known' && productSignal) {
    label(
      'full-section-assumed',
      'Throughput not given: the section is taken as full, which is the worst case.',
      [],
    )
  }
  if (arrangement === 'pipe' && situation.streamShare > 1) {
    label(
      'flow-exceeds-pipe',
      `The throughput would need ${Math.round(situation.streamShare * 100)} % of the pipe at this speed; the pipe is taken as full. Check throughput, speed and diameter.`,
      [],
    )
  }
  if (point.lanes > 1 && arrangement === 'tunnel') {
    label(
      'lanes-side-by-side',
      `${point.lanes} lanes run through one opening; packs side by side add their signals.`,
      [],
    )
  }
  if (facts.oversized) {
    label(
      'opening-larger-than-needed',
      'A smaller opening lets this pack through and finds smaller pieces.',
      ['coil-model', 'coil-clearance'],
    )
  }
  return labels
}
