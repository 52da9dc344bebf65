import type { CoilAssessment, CoilFinding } from '../../coil/assessment.ts'
import type { Brief, Finding } from '../../contract/index.ts'
import type { XrayAssessment, XrayFinding } from '../../xray/assessment.ts'
import { meetsOver } from './meets.ts'

const NOISE_WORDS = {
  photon: 'too few x-rays through the pack',
  electronics: "the detector's own noise",
  grain: 'the grain pattern of the food',
  unevenness: 'unevenness of the food',
  packaging: 'unevenness of the container wall',
} as const

/** The kind of noise that hides most, in words. */
export function mainNoise(finding: XrayFinding): { words: string; share: number } {
  const [kind, share] = Object.entries(finding.noise).sort((a, b) => b[1] - a[1])[0] as [
    keyof typeof NOISE_WORDS,
    number,
  ]
  return { words: NOISE_WORDS[kind], share }
}

const SETTLES = { sinks: 'It sinks', floats: 'It floats', stays: '' } as const

/** Where the sizes hold, when it is not the middle; empty else. */
function whereWords({ settling, place, zones }: XrayFinding): string {
  if (!zones.some(({ settlesThere }) => settlesThere)) return ''
  const there = zones.find(({ name }) => name === place)
  return there?.state === 'blind'
    ? `${SETTLES[settling]} to the ${place}, where the container hides it from this beam.`
    : `${SETTLES[settling]} to the ${place}; the sizes hold there.`
}

function noteOf(finding: XrayFinding, voidFree: boolean): string {
  const where = whereWords(finding)
  if (where && finding.bestMm === null && !finding.looksLikeVoid) return where
  return [where, limitsOf(finding, voidFree)].filter(Boolean).join(' ')
}

function limitsOf(finding: XrayFinding, voidFree: boolean): string {
  const limit = `${Number(finding.limitMm.toFixed(1))} mm`
  if (finding.looksLikeVoid && !voidFree) {
    return 'Attenuates no more than the food: in the picture it looks like a void, a bubble or a fold.'
  }
  const { words, share } = mainNoise(finding)
  const limited = `Limited mainly by ${words} (${Math.round(share * 100)} % of the noise).`
  if (finding.bestMm === null) return `Not found up to ${limit}, the largest size computed here. ${limited}`
  if (finding.expectedMm === null)
    return `Only an ideal image would find it; in practice not up to ${limit}. ${limited}`
  return limited
}

const nullable = (value: number | null) => (value === null ? null : Number(value.toPrecision(6)))

type Common = XrayFinding | CoilFinding

/** What all families' findings share, in the shape of the contract; `meets` unless it follows from the sizes. */
function toFinding(
  brief: Brief,
  finding: Pick<
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
  meets?: Finding['meets'],
): Finding {
  const contaminant = brief.contaminants[finding.contaminant]!
  const { bestMm, expectedMm, cautiousMm } = finding
  return {
    contaminant: finding.contaminant,
    material: contaminant.material,
    shape: contaminant.shape,
    placement: contaminant.placement,
    lengthMm: contaminant.lengthMm,
    faceMm2: contaminant.faceMm2,
    bestMm: nullable(bestMm),
    halfMm: nullable(finding.halfMm),
    expectedMm: nullable(expectedMm),
    sureMm: nullable(finding.sureMm),
    cautiousMm: nullable(cautiousMm),
    chanceAtMustFind: nullable(finding.chanceAtMustFind),
    chanceAnyOrientation: nullable(finding.chanceAnyOrientation),
    meets: meets ?? meetsOver({ bestMm, expectedMm, cautiousMm }, finding.zones, contaminant.mustFindMm),
    mustFindMm: contaminant.mustFindMm,
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

/** Findings of an x-ray machine in the shape of the contract. */
export function xrayFindings(brief: Brief, pointIndex: number, assessment: XrayAssessment): Finding[] {
  const { voidFree } = brief.points[pointIndex]!.product
  return assessment.findings.map((finding) => toFinding(brief, finding, noteOf(finding, voidFree)))
}

/**
 * Findings of a metal detector in the shape of the contract. The static-field detector has no sizes: what it
 * reacts to stays open, the rest it cannot find.
 */
export function coilFindings(brief: Brief, assessment: CoilAssessment): Finding[] {
  return assessment.findings.map((finding) => {
    const withoutSize = assessment.family === 'static-field'
    return toFinding(
      brief,
      finding,
      finding.note,
      withoutSize ? (finding.answers ? 'open' : 'cannot') : undefined,
    )
  })
}
