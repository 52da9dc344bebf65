import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseBrief } from '../../src/brief/index.ts'
import type { XrayMachine } from '../../src/contract/index.ts'
import { buildOf } from '../../src/xray/beam/exposure.ts'
import { IDEAL, PRACTICE } from '../../src/xray/observer/practice.ts'
import {
  CHANCE_NINE_IN_TEN,
  differenceInBeam,
  looksLikeVoid,
  neededDetectability,
  objectIn,
  setScene,
  sizeAt,
} from '../../src/xray/observer/scene.ts'
import { materialAttenuation, packInBeam } from '../../src/xray/places/pack-in-beam.ts'
import { sweep } from '../sweep.ts'
import { briefOf, foods, layers, materialsToFind } from './arbitrary.ts'
import { directSize, dPrimeDirect } from './direct-observer.ts'

/** Sizes by the program's form and by the direct form of the same equations, over random briefs and machines. */
const CASES = sweep(60, 520)

const caseOf = fc.record({
  food: fc.constantFrom(...foods),
  heightMm: fc.double({ min: 15, max: 110, noNaN: true }),
  speedMPerMin: fc.double({ min: 5, max: 80, noNaN: true }),
  pixelMm: fc.constantFrom(0.3, 0.4, 0.6, 0.8, 1.2),
  kV: fc.integer({ min: 35, max: 120 }),
  layers: fc.constantFrom(...layers),
  material: fc.constantFrom(...materialsToFind),
  shape: fc.constantFrom('sphere', 'sphere', 'wire', 'flake'),
  placement: fc.constantFrom('inside', 'outside'),
  ideal: fc.boolean(),
})

describe('the fast form of the observer', () => {
  it('agrees with the direct form within 0.5 % at the median and 1 % at worst', () => {
    const differences: number[] = []
    let onlyOne = 0
    for (const one of fc.sample(caseOf, { numRuns: CASES, seed: 20 })) {
      const parsed = parseBrief(briefOf(one))
      if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
      const point = parsed.brief.points[0]!
      const contaminant = parsed.brief.contaminants[0]!
      const build = buildOf(parsed.brief.equipment[0] as XrayMachine)
      const pack = packInBeam(point, build)
      const constants = one.ideal ? IDEAL : PRACTICE
      const scene = setScene(build, point, pack, { kV: one.kV, mA: 6 }, constants)
      const mu = materialAttenuation(contaminant.material)
      if (looksLikeVoid(scene, mu, contaminant.placement)) continue
      const fast = sizeAt(scene, objectIn(scene, contaminant, mu), CHANCE_NINE_IN_TEN)
      const deltaMuPerMm = differenceInBeam(pack, mu, contaminant.placement)
      const direct = directSize(
        (d) =>
          dPrimeDirect(
            scene.channels,
            pack,
            scene.observer.imaging,
            {
              shape: contaminant.shape,
              deltaMuPerMm,
              gatheredMm: Math.min(contaminant.lengthMm ?? 0, Math.max(constants.gatheredWireMm, d)),
              faceMm2: contaminant.faceMm2 ?? 0,
            },
            d,
          ),
        neededDetectability(scene, CHANCE_NINE_IN_TEN),
        scene.limitMm,
      )
      if (fast === null || direct === null) {
        if (fast !== direct) onlyOne++
        continue
      }
      differences.push(Math.abs(fast / direct - 1))
    }
    differences.sort((a, b) => a - b)
    expect(differences.length).toBeGreaterThan(CASES * 0.48)
    expect(differences[Math.floor(differences.length / 2)]).toBeLessThan(0.005)
    expect(differences.at(-1)).toBeLessThan(0.01)
    expect(onlyOne).toBe(0)
  }, 300_000)
})
