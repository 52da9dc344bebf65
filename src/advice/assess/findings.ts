import type { CoilAssessment, CoilFinding } from '../../coil/assessment.ts'
import type { Brief, DemonstratedRecord, Finding, Zone } from '../../contract/index.ts'
import { chanceOnCurve } from '../../numerics/chance-on-curve.ts'
import type { XrayAssessment, XrayFinding } from '../../xray/assessment.ts'
import { asMeasured, demonstratedAt } from './after-trials.ts'
import { behindInsert } from './behind-insert.ts'
import { meetsOver } from './meets.ts'

const nullable = (value: number | null) => (value === null ? null : Number(value.toPrecision(6)))

type Common = XrayFinding | CoilFinding

/** The machine at its point. */
export interface Place {
  readonly pointIndex: number
  readonly equipment: string
}

/** A size shown on the product is the size to promise; it is expected at least. */
const promisedBy = (sizes: Zone['sizes'], shown: DemonstratedRecord | null): Zone['sizes'] =>
  shown === null
    ? sizes
    : {
        ...sizes,
        expectedMm: Math.min(sizes.expectedMm ?? shown.sizeMm, shown.sizeMm),
        cautiousMm: shown.sizeMm,
      }

/** Chance at the size asked: the model's own, or read off the curve of a measured machine. */
function chanceAtAsked<P extends Pick<Common, 'chanceAtMustFind' | 'curve'>>(
  predicted: P,
  measured: P,
  mustFindMm: number | null,
): number | null {
  if (measured === predicted || mustFindMm === null) return predicted.chanceAtMustFind
  return chanceOnCurve(measured.curve, mustFindMm)
}

/** What all families' findings share, in the shape of the contract; `meets` unless it follows from the sizes. */
function toFinding(
  brief: Brief,
  { pointIndex, equipment }: Place,
  predicted: Pick<
    Common,
    | 'contaminant'
    | 'bestMm'
    | 'halfMm'
    | 'expectedMm'
    | 'sureMm'
    | 'cautiousMm'
    | 'chanceAtMustFind'
    | 'chanceAnyOrientation'
    | 'curve'
    | 'zones'
    | 'calculation'
    | 'widest'
  >,
  note: string,
  more: Pick<Finding, 'bestRangeMm' | 'extrapolated'>,
  meets?: Finding['meets'],
): Finding {
  const contaminant = brief.contaminants[predicted.contaminant]!
  const at = { pointIndex, equipment, contaminant: predicted.contaminant }
  const finding = asMeasured(brief, at, predicted)
  const { bestMm, expectedMm, cautiousMm } = finding
  const demonstrated = demonstratedAt(brief, at, more.bestRangeMm?.[0] ?? bestMm)
  const sizes = { bestMm, expectedMm, cautiousMm }
  return {
    contaminant: finding.contaminant,
    material: contaminant.material,
    shape: contaminant.shape,
    placement: contaminant.placement,
    lengthMm: contaminant.lengthMm,
    faceMm2: contaminant.faceMm2,
    bestMm: nullable(bestMm),
    ...more,
    halfMm: nullable(finding.halfMm),
    expectedMm: nullable(expectedMm),
    sureMm: nullable(finding.sureMm),
    cautiousMm: nullable(cautiousMm),
    chanceAtMustFind: nullable(chanceAtAsked(predicted, finding, contaminant.mustFindMm)),
    chanceAnyOrientation: nullable(finding.chanceAnyOrientation),
    meets: meets ?? meetsOver(sizes, finding.zones, contaminant.mustFindMm, promisedBy(sizes, demonstrated)),
    mustFindMm: contaminant.mustFindMm,
    demonstrated,
    measured: finding !== predicted,
    curve: {
      sizesMm: finding.curve.sizesMm.map((v) => Number(v.toPrecision(4))),
      chance: finding.curve.chance.map((v) => Number(v.toPrecision(4))),
    },
    zones: [...finding.zones],
    widest: finding.widest,
    note,
    calculation: finding.calculation,
  }
}

/** Findings of an x-ray machine in the shape of the contract; what limits them rules note. */
export function xrayFindings(brief: Brief, at: Place, assessment: XrayAssessment): Finding[] {
  const point = brief.points[at.pointIndex]!
  return assessment.findings.map((assessed) => {
    const { bestRangeMm, extrapolated } = assessed
    const finding = { ...assessed, zones: [...assessed.zones, ...behindInsert(point, assessed.zones)] }
    return toFinding(brief, at, finding, '', {
      bestRangeMm: bestRangeMm && [bestRangeMm[0], bestRangeMm[1]],
      extrapolated: extrapolated.by.length > 0 ? { ...extrapolated, by: [...extrapolated.by] } : null,
    })
  })
}

/**
 * Findings of a metal detector in the shape of the contract. The static-field detector has no sizes: what it
 * reacts to stays open, the rest it cannot find.
 */
export function coilFindings(brief: Brief, at: Place, assessment: CoilAssessment): Finding[] {
  return assessment.findings.map((finding) => {
    const { bestRangeMm } = finding
    const withoutSize = assessment.family === 'static-field'
    return toFinding(
      brief,
      at,
      finding,
      '',
      { bestRangeMm: bestRangeMm && [bestRangeMm[0], bestRangeMm[1]], extrapolated: null },
      withoutSize ? (finding.answers ? 'open' : 'cannot') : undefined,
    )
  })
}
