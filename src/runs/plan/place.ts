import type { Advice, Finding, Plan } from '../../contract/index.ts'

/** A machine at a point, and what it is predicted to do with one contaminant. */
export interface Placed {
  readonly pointIndex: number
  readonly option: Advice['points'][number]['options'][number]
  readonly finding: Finding
}

export interface Wanted {
  readonly contaminant: number
  readonly equipment?: string | undefined
  readonly point?: number | undefined
}

/**
 * The machine that the trial is of: as asked; else the one the recommendation uses for this contaminant; else the
 * one expected to find the smallest piece. Null where none has an expected size.
 */
export function placedMachine(advice: Advice, { contaminant, equipment, point }: Wanted): Placed | null {
  const all = advice.points.flatMap(({ options }, pointIndex) =>
    options.flatMap((option): Placed[] => {
      const finding = option.findings.find((one) => one.contaminant === contaminant)
      const asked =
        (point === undefined || point === pointIndex) && (!equipment || equipment === option.equipment)
      return asked && finding?.expectedMm && finding.halfMm ? [{ pointIndex, option, finding }] : []
    }),
  )
  const used = advice.combination.uses.find(({ contaminants }) => contaminants.includes(contaminant))
  const recommended = all.find(
    ({ option, pointIndex }) =>
      option.equipment === used?.equipment && advice.points[pointIndex]!.name === used.point,
  )
  const best = [...all].sort((a, b) => a.finding.expectedMm! - b.finding.expectedMm!)[0]
  return recommended ?? best ?? null
}

/**
 * Places of the pack with the size expected there. The counted runs are made in the weakest of those where the piece
 * can lie and is found at all.
 */
export function placesOf({ finding }: Placed): {
  positions: Plan['positions']
  predicted: Plan['predicted']
} {
  const reached = finding.zones.filter(({ canLieThere, sizes }) => canLieThere && sizes.expectedMm !== null)
  const weakest = [...reached].sort((a, b) => b.sizes.expectedMm! - a.sizes.expectedMm!)[0]
  const worse = Math.max(1, (weakest?.sizes.expectedMm ?? 0) / finding.expectedMm!)
  const place = weakest?.name ?? 'the weakest place of the pack'
  return {
    positions: [
      ...finding.zones.map(({ name, sizes }) => ({
        name,
        sizeMm: sizes.expectedMm,
        counted: name === weakest?.name,
      })),
      ...(weakest ? [] : [{ name: place, sizeMm: finding.expectedMm, counted: true }]),
    ],
    predicted: { a50: finding.halfMm! * worse, a90: finding.expectedMm! * worse, place },
  }
}

/** Lies of a piece that has a direction; each is counted by itself. One empty word for a ball. */
export function liesOf({ finding, option }: Placed): string[] {
  if (finding.shape === 'sphere') return ['']
  return option.family === 'xray'
    ? ['along the belt', 'across the belt']
    : ['along the travel', 'across the travel']
}
