import type { Advice, Finding, Option } from '../../../src/contract/advice.ts'

/** One contaminant of the brief as the findings describe it. */
export type Wanted = Pick<
  Finding,
  'contaminant' | 'material' | 'shape' | 'lengthMm' | 'faceMm2' | 'placement' | 'mustFindMm'
>

const allOptions = (advice: Advice): Option[] => advice.points.flatMap((point) => point.options)

/** The contaminants of the brief, in its order. */
export function wantedOf(advice: Advice): Wanted[] {
  const found = allOptions(advice).flatMap((option) => option.findings)
  return advice.brief.contaminants.map(
    (given, contaminant) =>
      found.find((finding) => finding.contaminant === contaminant) ?? {
        contaminant,
        material: given.material,
        shape: given.shape ?? 'sphere',
        lengthMm: given.lengthMm ?? null,
        faceMm2: given.faceMm2 ?? null,
        placement: given.placement ?? 'inside',
        mustFindMm: given.mustFindMm ?? null,
      },
  )
}

export function findingOf(option: Option, contaminant: number): Finding | undefined {
  return option.findings.find((finding) => finding.contaminant === contaminant)
}

/** Contaminants that no ranked machine at any point can find, whatever its settings. */
export function honestNo(advice: Advice): Wanted[] {
  const ranked = allOptions(advice).filter((option) => option.rank !== null)
  return wantedOf(advice).filter(
    ({ contaminant }) =>
      ranked.length > 0 && ranked.every((option) => findingOf(option, contaminant)?.meets === 'cannot'),
  )
}
