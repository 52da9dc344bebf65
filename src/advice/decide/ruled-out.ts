import type { Finding } from '../../contract/index.ts'
import type { Assessed, Detector, PlacedOutcome } from '../stages.ts'

/**
 * A rule that excludes one contaminant at one machine (bone in food that keeps its bones) takes away what physics
 * would promise of it: no size, and the rule's words as the reason.
 */
export function withoutRuledOut(
  detectors: Assessed['detectors'],
  outcomes: readonly PlacedOutcome[],
): Assessed['detectors'] {
  const ruling = outcomes.filter(
    (o) => o.outcome === 'fired' && o.type === 'excludes' && o.equipment !== null && o.contaminant !== null,
  )
  if (ruling.length === 0) return detectors
  return detectors.map((there, at) =>
    there.map((detector): Detector => {
      const own = ruling.filter((o) => o.pointIndex === at && o.equipment === detector.linedUp.machine.id)
      const findings = detector.findings.map((finding) => {
        const said = own.filter((o) => o.contaminant === finding.contaminant)
        return said.length === 0 ? finding : nothingOf(finding, said.map(({ text }) => text).join(' '))
      })
      return { ...detector, findings }
    }),
  )
}

const nothingOf = (finding: Finding, note: string): Finding => ({
  ...finding,
  bestMm: null,
  bestRangeMm: null,
  extrapolated: null,
  halfMm: null,
  expectedMm: null,
  sureMm: null,
  cautiousMm: null,
  chanceAtMustFind: null,
  chanceAnyOrientation: null,
  meets: 'cannot',
  curve: { sizesMm: [], chance: [] },
  zones: [],
  widest: '',
  note,
})
