import { describe, expect, it } from 'vitest'
import type { FactSheet } from '../../../src/advice/facts/fact-sheet.ts'
import { factsForXray } from '../../../src/advice/facts/facts-xray.ts'
import { factsForXrayFinding } from '../../../src/advice/facts/facts-xray-finding.ts'
import type { XrayAssessment, XrayFinding } from '../../../src/xray/assessment.ts'
import { SAMPLE_MACHINE, sampleAssessment, sampleBrief } from '../sample.ts'

const read = (sheet: FactSheet) => Object.fromEntries(sheet.facts.map((fact) => [fact.id, fact]))
const option = (
  over: Partial<XrayAssessment> = {},
  machine: Partial<typeof SAMPLE_MACHINE> = {},
  brief: Record<string, unknown> = {},
) => read(factsForXray(sampleBrief(brief), 0, { ...SAMPLE_MACHINE, ...machine }, sampleAssessment(over)))
const finding = (over: Partial<XrayFinding> = {}, contaminant = 0) =>
  read(factsForXrayFinding(sampleBrief(), 0, SAMPLE_MACHINE, sampleAssessment({}, over), contaminant))

describe('facts of a machine at a point', () => {
  it('name their scope and link to the calculations of the physics', () => {
    expect(option()['setting.kV']).toMatchObject({
      value: 60,
      unit: 'kV',
      origin: 'computed',
      calculation: 'p0.sample.kV',
      scope: 'p0.sample-machine',
    })
  })
  it('take the worse channel for the signal that is left, in per cent', () => {
    expect(option()['beam.signalLeftPct']?.value).toBeCloseTo(20)
    expect(option({ transmission: { first: 0.2, last: 0.1 } })['beam.signalLeftPct']?.value).toBeCloseTo(10)
  })
  it('leave out a limit the machine does not state', () => {
    expect(option()).not.toHaveProperty('machine.maxLinesPerSecond')
    expect(option({}, { maxLinesPerSecond: 900 })['machine.maxLinesPerSecond']?.value).toBe(900)
  })
  it('count the lines a square pixel needs', () => {
    expect(option()['beam.linesNeededPerSecond']?.value).toBeCloseTo(750)
  })
  it('set what the pack needs against what the machine takes', () => {
    expect(option()).toMatchObject({
      'fit.widthNeededMm': { value: 200 },
      'fit.widthAllowedMm': { value: 400 },
      'fit.heightNeededMm': { value: 60 },
      'fit.heightAllowedMm': { value: 150 },
      'fit.fanRefused': { value: false },
    })
    expect(option()['fit.fanHalfAngleDeg']?.value).toBeCloseTo(14.04, 2)
  })
  it('show a refusal of the physics as a need above what is allowed', () => {
    const refused = option({
      refusals: [
        { id: 'too-wide', given: 500, allowed: 400, unit: 'mm' },
        { id: 'fan-too-wide', given: 500, allowed: 460, unit: 'mm' },
      ],
    })
    expect(refused['fit.widthNeededMm']?.value).toBe(500)
    expect(refused['fit.fanRefused']?.value).toBe(true)
  })
  it('lay lanes side by side, and turn the fan upright for a side beam', () => {
    const twoLanes = option({}, {}, { points: [{ lanes: 2 }] })
    expect(twoLanes['fit.widthNeededMm']?.value).toBe(400)
    expect(twoLanes['fit.fanHalfAngleDeg']?.value).toBeCloseTo(26.57, 2)
    expect(option({}, { beam: 'side' })['fit.fanHalfAngleDeg']?.value).toBeCloseTo(4.29, 2)
  })
  it('are entered where the brief gives the figure, assumed for an archetype and for what was filled in', () => {
    const described = { equipment: [{ ...SAMPLE_MACHINE, detectorLayers: LAYERS, views: 2 }] }
    expect(option({}, { views: 2 })['machine.views']?.origin).toBe('assumed')
    expect(option({}, { views: 2 }, described)['machine.views']?.origin).toBe('entered')
    expect(option({}, {}, described)['machine.beam']).toMatchObject({ value: 'down', origin: 'assumed' })
  })
  it.each([
    [2.5, 4, 0, 1],
    [2.5, 2.9, 0, 0],
    [2.5, null, 0, 1],
    [3.5, 5, 1, 0],
    [null, null, 1, 0],
  ])('expected %s, cautious %s against 3 mm: %s unmet, %s close', (expectedMm, cautiousMm, unmet, close) => {
    const sheet = read(
      factsForXray(sampleBrief(), 0, SAMPLE_MACHINE, sampleAssessment({}, { expectedMm, cautiousMm })),
    )
    expect([sheet['findings.unmet']?.value, sheet['findings.close']?.value]).toEqual([unmet, close])
  })
})

describe('facts of one contaminant', () => {
  it('give the noise in per cent and link sizes to their calculations', () => {
    expect(finding()).toMatchObject({
      'finding.grainPct': { value: 70, unit: '%' },
      'finding.expectedMm': { value: 2.5, calculation: 'p0.sample.c0.expected' },
      'finding.bestMm': { value: 2, calculation: 'p0.sample.c0.best' },
      'finding.contrast': { value: 5.5, calculation: 'p0.sample.c0.contrast' },
      'finding.spread': { value: 1.6 },
      'finding.possible': { value: true },
    })
  })
  it('have no size where there is none', () => {
    const lost = finding({ bestMm: null, expectedMm: null, cautiousMm: null })
    expect(lost['finding.possible']?.value).toBe(false)
    for (const id of ['bestMm', 'expectedMm', 'cautiousMm', 'spread'])
      expect(lost).not.toHaveProperty(`finding.${id}`)
  })
  it('count and name the weak zones', () => {
    const zone = (name: string, state: 'findable' | 'degraded' | 'blind') => ({
      name,
      state,
      share: null,
      pathMm: null,
      sizes: { bestMm: null, expectedMm: null, cautiousMm: null },
      canLieThere: true,
      settlesThere: false,
      why: '',
    })
    const zones = [zone('body', 'findable'), zone('heel', 'degraded'), zone('base', 'blind')]
    expect(finding({ zones })).toMatchObject({
      'finding.blindZones': { value: 1 },
      'finding.weakZones': { value: 2 },
      'finding.weakZoneNames': { value: 'heel (degraded), base (blind)' },
    })
  })
  it('are none for a contaminant the physics did not look at', () => {
    expect(finding({}, 3)).toEqual({})
  })
})

const LAYERS = [{ scintillator: 'gos', mgPerCm2: 110, swank: 0.8, electronsPerKeV: 20, noiseElectrons: 1500 }]
