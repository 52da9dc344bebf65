import type { Brief, Calculation } from '../../contract/index.ts'
import { findingOf, type InPlace, type Line } from '../line/controls-in-place.ts'
import type { Separator } from '../line/separators.ts'
import { COUNTS, calculation, FRAGMENTS, WORKING } from '../line/trail.ts'
import type { HazardRates } from '../rate/hazard-rates.ts'
import type { HazardSeparator } from './hazard-separator.ts'

/** Id of the calculation of what a device takes out of all that arrives. */
export const takenOutId = ({ pointIndex, equipment }: Separator, contaminant: number): string =>
  `p${pointIndex}.${equipment}.c${contaminant}.taken-out`

/** Id of the calculation of a control's mean chance. */
export const meanChanceId = ({ pointIndex, option }: InPlace, contaminant: number): string =>
  `p${pointIndex}.${option.equipment}.c${contaminant}.mean-chance`

/** Beginning of the ids of a hazard's calculations; a line is named by its last point. */
export const idOf = (line: Line, contaminant: number): string =>
  `p${line.points.at(-1)}.c${contaminant}.register`

/** Calculations of a hazard: mean chances, shares taken out, pieces arriving and passing. */
export function trailOf(
  brief: Brief,
  line: Line,
  contaminant: number,
  rates: HazardRates,
  controls: readonly InPlace[],
  meanChances: readonly number[],
  separators: readonly HazardSeparator[],
): Calculation[] {
  const id = idOf(line, contaminant)
  const means = controls.map((control, i) =>
    calculation(
      meanChanceId(control, contaminant),
      `mean chance of finding what arrives, ${control.option.label}`,
      'P̄',
      meanChances[i]!,
      '',
      '∫ f(L) · w · Σ share · Φ(ln(d/a50)/s) dL, over length and shapes',
      findingOf(control, contaminant)?.calculation ? [findingOf(control, contaminant)!.calculation] : [],
      [FRAGMENTS, WORKING],
    ),
  )
  const takenOut = separators.flatMap(({ label, takesOut: [worst, best], calculation: id }) =>
    (['worst', 'best'] as const).map((side, i) =>
      calculation(
        i === 0 ? id : `${id}-best`,
        `share of what arrives taken out by ${label}, ${side}`,
        'S̄',
        [worst, best][i]!,
        '',
        '∫ f(L) · S(d) dL over length and shapes, S the share its model gives by size',
        [],
        [FRAGMENTS],
      ),
    ),
  )
  const found = brief.finds.length > 0 ? 'finds' : 'found per million packs'
  const arriving = calculation(
    `${id}.arriving`,
    'pieces arriving',
    'λ',
    rates.total,
    'per million',
    rates.isBound ? '2.996 ÷ (million packs · P̄); nothing found, 95 %' : `${found} ÷ (million packs · P̄)`,
    means.map((one) => one.id),
    [COUNTS, FRAGMENTS],
  )
  const after = rates.rows.map((row) =>
    calculation(
      `${id}.after-${row.fromLengthMm}`,
      `pieces passing, longest length from ${row.fromLengthMm} mm`,
      'm',
      row.after,
      'per million',
      'λ · ∫ f(L) · Π(1 − Pⱼ(d)) dL, controls in series',
      [arriving.id],
      [COUNTS, FRAGMENTS, WORKING],
    ),
  )
  return [...means, ...takenOut, arriving, ...after]
}
