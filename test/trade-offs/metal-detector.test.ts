import { describe, expect, it } from 'vitest'
import { demos } from '../../src/brief/demos.ts'
import { parseBrief } from '../../src/brief/index.ts'
import { loopFieldPerM } from '../../src/coil/opening/coil-field.ts'
import { NEAR_WALL_GAIN } from '../../src/coil/opening/geometry-factor.ts'
import { loopFieldAt, openingMap } from '../../src/coil/opening/opening-map.ts'
import type { BriefInput } from '../../src/contract/index.ts'
import { metalDetectorsAt, metalSetup, metalsOf } from '../../src/trade-offs/metal-setup.ts'
import { angleDeg, responsePlane } from '../../src/trade-offs/response-plane.ts'
import { turnedPiece } from '../../src/trade-offs/turned-piece.ts'

function setupOf(contaminant: BriefInput['contaminants'][number], machine = 'coil-single') {
  const cheddar = demos.find(({ id }) => id === 'cheddar')!.brief
  const parsed = parseBrief({ ...cheddar, contaminants: [contaminant], equipment: [machine] })
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  return metalSetup(parsed.brief, 0, metalDetectorsAt(parsed.brief, 0)[0]!, 0)
}

describe('the response plane', () => {
  // Check values of the exact sphere (Wait 1951), 1 mm, in mm³: 316 at 300 kHz −5.8605e-4 − 0.041881i; mild steel
  // (σ 6e6 S/m, μr 100) at 100 kHz +1.3902 − 0.15387i. Computed to 40 digits by an independent implementation.
  it('shows the loss to the right and what is in step upwards, in mm³', () => {
    const stainless = responsePlane(setupOf({ material: 'ss316', mustFindMm: 1 })!, 1, [300])[0]!.target
    expect(stainless.resistiveMm3).toBeCloseTo(0.041881, 5)
    expect(stainless.reactiveMm3).toBeCloseTo(-5.8605e-4, 6)
    const steel = responsePlane(setupOf({ material: 'steel', mustFindMm: 1 })!, 1, [100])[0]!.target
    expect(steel.reactiveMm3).toBeCloseTo(1.3902, 3)
    expect(steel.resistiveMm3).toBeCloseTo(0.15387, 4)
  })

  it('has iron near the magnetic direction, wet food near pure loss', () => {
    const [point] = responsePlane(setupOf({ material: 'steel', mustFindMm: 1 })!, 1, [100])
    expect(angleDeg(point!.target)).toBeGreaterThan(75)
    expect(Math.abs(angleDeg(point!.product!))).toBeLessThan(10)
  })
})

describe('a piece turned', () => {
  it.each([
    { material: 'ss316', shape: 'wire', lengthMm: 10, mustFindMm: 1 },
    { material: 'steel', shape: 'wire', lengthMm: 8, mustFindMm: 0.5 },
    { material: 'aluminium', shape: 'flake', faceMm2: 30, mustFindMm: 0.5 },
  ] as const)('$material $shape: along and across it has the sizes of the finding', (contaminant) => {
    const { listening, piece, finding } = setupOf(contaminant)!
    const [along, across] = turnedPiece(listening, piece, finding.limitMm, 0.5, [0, 90])
    expect(finding.orientations).toHaveLength(2)
    for (const { orientation, expectedMm } of finding.orientations) {
      const turned = orientation === 'along' ? along : across
      if (expectedMm === null) expect(turned!.expectedMm).toBeNull()
      else expect(turned!.expectedMm).toBeCloseTo(expectedMm, 6)
    }
  })

  it('between them answers by cos² and sin²: thin non-magnetic wire along is half of across', () => {
    const { listening, piece, finding } = setupOf({
      material: 'brass',
      shape: 'wire',
      lengthMm: 10,
      mustFindMm: 1,
    })!
    const steps = turnedPiece(listening, piece, finding.limitMm, 0.1, [0, 30, 60, 90])
    steps.forEach(({ angleDeg: angle, response }) => {
      expect(response).toBeCloseTo(0.5 + 0.5 * Math.sin((angle * Math.PI) / 180) ** 2, 1)
    })
    expect(Math.max(...steps.map(({ response }) => response))).toBeCloseTo(1, 9)
  })

  it('asks for a piece that has a direction', () => {
    const { listening, piece } = setupOf({ material: 'ss316', mustFindMm: 2 })!
    expect(() => turnedPiece(listening, piece, 12, 1, [0])).toThrow('a sphere answers the same')
  })
})

describe('where in the opening', () => {
  it('the loop has the field of its axis formula on the axis', () => {
    for (const z of [0, 0.03, 0.1, 0.4]) {
      const [x, y, along] = loopFieldAt(0.35, 0.175, [0, 0, z])
      expect(along / loopFieldPerM(0.35, 0.175, z)).toBeCloseTo(1, 10)
      expect(Math.abs(x) + Math.abs(y)).toBeLessThan(1e-12)
    }
  })

  // Computed before by adding up current elements: 0.1, 0.2, 0.25, 0.3, 0.4 heights off the centre, w/h = 2.
  it('rises towards the wall as computed by another way', () => {
    const up = [0, 0.1, 0.2, 0.25, 0.3, 0.4]
    const map = openingMap({ widthM: 0.35, heightM: 0.175 }, [0], up)
    const expected = [1, 1.03, 1.11, 1.2, 1.34, 2.2]
    map.forEach(({ relative }, at) => {
      expect(Math.abs(relative / expected[at]! - 1)).toBeLessThan(0.01)
    })
    expect(map[4]!.relative).toBeCloseTo(NEAR_WALL_GAIN, 2)
  })

  it('is mirrored left and right, above and below, and weakest in the centre', () => {
    const map = openingMap({ widthM: 0.3, heightM: 0.1 }, [-0.4, -0.2, 0, 0.2, 0.4], [-0.3, 0, 0.3])
    const at = (x: number, y: number) => map.find(({ across, up }) => across === x && up === y)!.relative
    expect(at(-0.4, 0.3)).toBeCloseTo(at(0.4, -0.3), 10)
    expect(Math.min(...map.map(({ relative }) => relative))).toBeCloseTo(1, 9)
  })
})

describe('what has a page', () => {
  it('metals only; null for what is none', () => {
    expect(setupOf({ material: 'glass_container', mustFindMm: 2 })).toBeNull()
    const parsed = parseBrief(demos.find(({ id }) => id === 'hazelnuts')!.brief)
    if (!parsed.ok) throw new Error('hazelnuts')
    const metals = metalsOf(parsed.brief).map((at) => parsed.brief.contaminants[at]!.material)
    expect(metals).toEqual(['ss304', 'steel'])
  })
})
