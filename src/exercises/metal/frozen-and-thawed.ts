import type { Exercise } from '../exercise.ts'
import { howMuchLarger } from '../how-much-smaller.ts'
import { count, mm, times } from '../numbers.ts'
import { withCoil } from '../practice.ts'
import { openingScene } from './opening-scene.ts'

const TEMPERATURES_C = [-18, -6, -3, 4, 15] as const

const blocks = TEMPERATURES_C.map((temperatureC) => ({
  temperatureC,
  seen: withCoil({
    product: { food: 'beef_mince', temperatureC },
    point: { heightMm: 60, apertureHeightMm: 125, apertureWidthMm: 300 },
    contaminants: [{ material: 'ss316' }],
  }),
}))

/** Frozen meat hardly conducts; thawed meat does, and hides metal. */
export const frozenAndThawed: Exercise = {
  id: 'frozen-and-thawed',
  title: () => 'Frozen and thawed',
  about: () => 'Minced beef before a metal detector, frozen and thawed.',
  teaches: ({ say }) =>
    say(
      'Wet food conducts and speaks to a metal detector itself; frozen through, it is nearly silent.',
      'Thawed meat is noisy for a metal detector. Frozen meat is quiet.',
    ),
  timed: false,
  count: 1,
  rests:
    'Metal detector model; conductivity of meat from the reference data, with the freezing rule named there.',
  questions: ({ say }) => {
    const frozen = blocks[0]!.seen()
    const thawed = blocks[3]!.seen()
    const [a, b] = [frozen.expectedMm[0] ?? null, thawed.expectedMm[0] ?? null]
    const ratio = a !== null && b !== null ? b / a : Number.POSITIVE_INFINITY
    const conducts = thawed.assessment.conductivity.valueSPerM / frozen.assessment.conductivity.valueSPerM
    const food = thawed.assessment.background[0]!.productOverSteelBall
    return [
      {
        situation: say(
          'Minced beef in blocks passes a metal detector (balanced coil) frozen through. After a stop of the freezer the same blocks come thawed.',
          'Blocks of minced beef go through a metal detector. Today the freezer failed and they come thawed.',
        ),
        facts: [
          { words: 'Blocks', value: `${frozen.point.heightMm} mm high, opening 125 × 300 mm` },
          {
            words: 'Frozen, thawed',
            value: `${TEMPERATURES_C[0]} °C, ${TEMPERATURES_C[3]} °C`.replaceAll('-', '−'),
          },
          { words: 'Piece', value: 'ball of stainless steel 316' },
        ],
        ask: say(
          'What becomes of the smallest ball found, in the thawed block against the frozen one?',
          'What happens to the smallest steel ball it finds?',
        ),
        scene: openingScene(frozen.point),
        answer: howMuchLarger(a, b),
        outcome: `${mm(a)} frozen, ${mm(b)} thawed${Number.isFinite(ratio) ? `: ${times(ratio)} as large` : ''}.`,
        reason: [
          say(
            `Thawed, the meat conducts ${count(conducts)} times as well. The currents it carries answer the coil like ${count(food)} balls of mild steel of 1 mm; the machine learns that signal, but what it cannot learn (how it varies from block to block) hides the piece.`,
            `Thawed meat carries current, like salt water. To the detector one block sounds like ${count(food)} iron balls of 1 mm. Most of that it can learn to ignore, but not all.`,
          ),
          say(
            'The detector also chooses another frequency: a low one in wet food, a high one in frozen. Settings made for frozen blocks are wrong for thawed ones, so half-thawed rims alarm.',
            'That is also why half-thawed blocks set off false alarms.',
          ),
        ],
        pictures: [
          {
            kind: 'bars',
            title: 'Smallest ball of stainless steel 316 expected to be found',
            unit: 'mm',
            bars: blocks.map(({ temperatureC, seen }) => ({
              words: `${temperatureC} °C`.replace('-', '−'),
              value: seen().expectedMm[0] ?? null,
              none: 'not found',
            })),
          },
        ],
      },
    ]
  },
}
