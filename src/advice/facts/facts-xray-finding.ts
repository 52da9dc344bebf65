import type { Brief, Calculation, XrayMachine } from '../../contract/index.ts'
import type { XrayAssessment, XrayFinding } from '../../xray/assessment.ts'
import { type FactSheet, FactWriter } from './fact-sheet.ts'
import { writeSizes } from './facts-sizes.ts'
import { mainNoise } from './main-noise.ts'
import { placeId } from './place-id.ts'

/** Facts of one contaminant in front of one x-ray machine; none where the physics found nothing to compute. */
export function factsForXrayFinding(
  brief: Brief,
  pointIndex: number,
  machine: XrayMachine,
  assessment: XrayAssessment,
  contaminant: number,
): FactSheet {
  const write = new FactWriter(placeId({ point: pointIndex, equipment: machine.id, contaminant }), brief)
  const finding = assessment.findings.find((one) => one.contaminant === contaminant)
  if (finding) writeFinding(write, finding, assessment.calculations)
  return write.sheet()
}

function writeFinding(write: FactWriter, finding: XrayFinding, calculations: readonly Calculation[]): void {
  const base = finding.calculation.slice(0, finding.calculation.lastIndexOf('.') + 1)
  const say = (id: string, value: string | number | boolean, name = 'expected') => {
    const calculation = calculations.find((one) => one.id === base + name)?.id ?? finding.calculation
    write.computed(id, value, calculation)
  }
  writeSizes(say, finding)
  say('finding.looksLikeVoid', finding.looksLikeVoid, 'contrast')
  say('finding.contrast', finding.contrast, 'contrast')
  say('finding.photonPct', 100 * finding.noise.photon, 'detectability')
  say('finding.electronicsPct', 100 * finding.noise.electronics, 'detectability')
  say('finding.grainPct', 100 * finding.noise.grain, 'detectability')
  say('finding.unevennessPct', 100 * finding.noise.unevenness, 'detectability')
  say('finding.packagingPct', 100 * finding.noise.packaging, 'detectability')
  const { words, share } = mainNoise(finding)
  say('finding.mainNoise', words, 'detectability')
  say('finding.mainNoisePct', Math.round(100 * share), 'detectability')
  const { by, factor } = finding.extrapolated
  say('finding.extrapolated', by.length > 0, 'cautious')
  if (by.length > 0) {
    say('finding.extrapolatedTo', by.map((far) => `this ${far}`).join(', '), 'cautious')
    say('finding.extrapolatedPct', Math.round(100 * (factor - 1)), 'cautious')
  }
  const rest = finding.zones.find((zone) => zone.settlesThere && zone.name === finding.place)
  say(
    'finding.settles',
    finding.zones.some(({ settlesThere }) => settlesThere),
  )
  say('finding.settling', finding.settling)
  say('finding.settlesAt', finding.place)
  say('finding.settledBlind', rest?.state === 'blind')
  const weak = finding.zones.filter((zone) => zone.canLieThere && zone.state !== 'findable')
  say('finding.blindZones', weak.filter((zone) => zone.state === 'blind').length)
  say('finding.weakZones', weak.length)
  say('finding.weakZoneNames', weak.map((zone) => `${zone.name} (${zone.state})`).join(', '))
}
