import { describe, expect, it } from 'vitest'
import type { FactSheet } from '../../../src/advice/facts/fact-sheet.ts'
import { factsForCoil } from '../../../src/advice/facts/facts-coil.ts'
import { factsForCoilFinding } from '../../../src/advice/facts/facts-coil-finding.ts'
import type { CoilAssessment, CoilFinding } from '../../../src/coil/assessment.ts'
import { COIL_MACHINE, coilAssessment, coilFinding, sampleBrief } from '../sample.ts'

const read = (sheet: FactSheet) => Object.fromEntries(sheet.facts.map((fact) => [fact.id, fact]))
const values = (sheet: FactSheet) => Object.fromEntries(sheet.facts.map(({ id, value }) => [id, value]))
const option = (over: Partial<CoilAssessment> = {}, brief: Record<string, unknown> = {}) =>
  factsForCoil(sampleBrief(brief), 0, COIL_MACHINE, coilAssessment(over))
const finding = (over: Partial<CoilFinding> = {}) =>
  factsForCoilFinding(sampleBrief(), 0, COIL_MACHINE.id, coilAssessment({ findings: [coilFinding(over)] }), 0)

describe('facts of a metal detector at a point', () => {
  it('give the opening with its origin and link to the physics', () => {
    const facts = read(option())
    expect(facts['coil.openingHeightMm']).toMatchObject({
      value: 100,
      unit: 'mm',
      calculation: 'p0.coil.opening.height',
      scope: 'p0.sample-coil',
    })
    expect(values(option())).toMatchObject({
      'coil.openingFrom': 'pack',
      'coil.openingShortMm': 100,
      'coil.openingWidthOverHeight': 2.5,
      'coil.heightFillPct': 60,
    })
  })
  it('take signals at the lowest frequency in use', () => {
    expect(values(option())).toMatchObject({
      'coil.frequencies': '50, 300',
      'coil.frequencyCount': 2,
      'coil.lowestKHz': 50,
      'coil.highestKHz': 300,
      'coil.productOverSteelBall': 2,
      'coil.layersOverSteelBall': 5,
      'coil.insidePct': 80,
      'coil.conductivityRange': 4,
    })
  })
  it('tell foil from film', () => {
    const layer = {
      material: 'x',
      place: 'wrap',
      kind: 'two faces',
      mostConductanceS: 1,
      magnetic: false,
    } as const
    const layers = [
      { ...layer, conductanceS: 0.8, film: true },
      { ...layer, conductanceS: 300, film: false },
    ]
    expect(values(option({ layers }))).toMatchObject({
      'coil.foilLayers': 1,
      'coil.filmLayers': 1,
      'coil.sheetSiemens': 300,
    })
  })
  it('set what the pack needs against the opening, refusals first', () => {
    expect(values(option())).toMatchObject({ 'fit.widthNeededMm': 200, 'fit.widthAllowedMm': 250 })
    const refusals = [{ id: 'too-high', given: 120, allowed: 100, unit: 'mm' }] as const
    expect(values(option({ refusals }))).toMatchObject({
      'fit.heightNeededMm': 120,
      'fit.heightAllowedMm': 100,
    })
  })
  it('let a stream have a fall and no fit', () => {
    const falling = values(
      option({
        arrangement: 'free-fall',
        refusals: [{ id: 'over-full', given: 140, allowed: 100, unit: '% of the section' }],
        filling: { heightShare: 1, areaShare: 1, basis: 'flow', speedMPerS: 4 },
      }),
    )
    expect(falling).not.toHaveProperty('fit.widthNeededMm')
    expect(falling['coil.areaFillPct']).toBe(140)
    expect(falling['coil.fallInTenthMm']).toBeCloseTo(449.03, 2)
    expect(values(option())).not.toHaveProperty('coil.fallInTenthMm')
  })
  it('say what a smaller opening would gain', () => {
    const opening = { heightMm: 75, widthMm: 150, origin: 'pack' } as const
    expect(values(option())['coil.oversizeGainPct']).toBe(0)
    expect(values(option({ fitting: { opening, expectedMm: [1.5] } }))).toMatchObject({
      'coil.oversizeGainPct': 25,
      'coil.fittingHeightMm': 75,
    })
    const lost = [coilFinding({ expectedMm: null })]
    expect(
      values(option({ fitting: { opening, expectedMm: [3] }, findings: lost }))['coil.oversizeGainPct'],
    ).toBe(100)
  })
  it('leave out food, pack and frequencies of a magnetic-field detector', () => {
    const slow = values(option({ family: 'static-field' }))
    expect(slow).toMatchObject({ 'coil.answering': 1, 'coil.silent': 0 })
    for (const id of ['coil.productSignal', 'coil.frequencies', 'findings.unmet', 'coil.packGapNeededMm'])
      expect(slow).not.toHaveProperty(id)
  })
})

describe('facts of one contaminant in front of a coil', () => {
  it('give sizes, what the food costs and the weak way to lie', () => {
    expect(values(finding())).toMatchObject({
      'finding.answers': true,
      'finding.expectedMm': 2,
      'finding.sureMm': 2.4,
      'finding.costOfFood': 2,
      'finding.weakOrientation': 'none',
      'finding.missedAgain': 0,
    })
    const wire = finding({
      weakOrientation: 'along',
      orientations: [
        { orientation: 'along', bestMm: 1, expectedMm: 1.5 },
        { orientation: 'across', bestMm: 0.5, expectedMm: 1 },
      ],
    })
    expect(values(wire)).toMatchObject({
      'finding.weakOrientation': 'along',
      'finding.orientationRatio': 1.5,
    })
  })
  it('tell of sizes missed above a found one', () => {
    expect(values(finding({ missedAgain: [{ fromMm: 6, toMm: 8 }] }))).toMatchObject({
      'finding.missedAgain': 1,
      'finding.missedFromMm': 6,
    })
  })
  it('have no size and no ratio where there is none', () => {
    const deaf = values(
      finding({ answers: false, bestMm: null, expectedMm: null, cautiousMm: null, sureMm: null }),
    )
    expect(deaf).toMatchObject({ 'finding.answers': false, 'finding.possible': false })
    for (const id of [
      'finding.expectedMm',
      'finding.sureMm',
      'finding.costOfFood',
      'finding.orientationRatio',
    ])
      expect(deaf).not.toHaveProperty(id)
  })
  it('are none for a contaminant the physics did not look at', () => {
    expect(factsForCoilFinding(sampleBrief(), 0, 'sample-coil', coilAssessment(), 7).facts).toEqual([])
  })
})
