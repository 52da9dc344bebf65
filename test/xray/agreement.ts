/**
 * How far the program's sizes lie from those of the direct form, over random briefs and machines: a few in the
 * tests, 520 by `npm run agreement`. The direct d′ is looked at where the program puts the size: its distance from
 * the needed one (the threshold has checks of its own) over its own slope there is the difference in size; upwards it must keep above.
 */
import fc from 'fast-check'
import { parseBrief } from '../../src/brief/index.ts'
import type { XrayMachine } from '../../src/contract/index.ts'
import { buildOf } from '../../src/xray/beam/exposure.ts'
import { IDEAL, PRACTICE } from '../../src/xray/observer/practice.ts'
import {
  CHANCE_NINE_IN_TEN,
  displacedFood,
  looksLikeVoid,
  objectIn,
  setScene,
  sizeAt,
} from '../../src/xray/observer/scene.ts'
import { materialAttenuation, packInBeam } from '../../src/xray/places/pack-in-beam.ts'
import { briefOf, foods, layers, materialsToFind } from './arbitrary.ts'
import { dPrimeDirect } from './direct-observer.ts'

const caseOf = fc.record({
  food: fc.constantFrom(...foods),
  heightMm: fc.oneof(
    { weight: 1, arbitrary: fc.double({ min: 2, max: 15, noNaN: true }) },
    { weight: 5, arbitrary: fc.double({ min: 15, max: 110, noNaN: true }) },
  ),
  speedMPerMin: fc.double({ min: 5, max: 80, noNaN: true }),
  pixelMm: fc.constantFrom(0.3, 0.4, 0.6, 0.8, 1.2),
  kV: fc.integer({ min: 35, max: 120 }),
  layers: fc.constantFrom(...layers),
  material: fc.constantFrom(...materialsToFind),
  shape: fc.constantFrom('sphere', 'sphere', 'wire', 'flake'),
  placement: fc.constantFrom('inside', 'outside'),
  ideal: fc.boolean(),
})

const SLOPE_STEP = 1.03
const LADDER = 1.4

export interface Agreement {
  /** Relative differences in size, smallest first. */
  differences: number[]
  /** Cases in which only one of the two forms has a size, or the direct one falls below above it. */
  only: string[]
}

export function agreement(cases: number, seed: number): Agreement {
  const differences: number[] = []
  const only: string[] = []
  for (const one of fc.sample(caseOf, { numRuns: cases, seed })) {
    const parsed = parseBrief(briefOf(one))
    // A layer thinner than its grain is no brief.
    if (!parsed.ok && parsed.problems.every(({ path }) => path === 'product.grainMm')) continue
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
    const point = parsed.brief.points[0]!
    const contaminant = parsed.brief.contaminants[0]!
    const build = buildOf(parsed.brief.equipment[0] as XrayMachine)
    const pack = packInBeam(point, build)
    const constants = one.ideal ? IDEAL : PRACTICE
    const scene = setScene(build, point, pack, { kV: one.kV, mA: 6 }, constants)
    const mu = materialAttenuation(contaminant.material)
    if (looksLikeVoid(scene, mu, contaminant.placement)) continue
    const piece = objectIn(scene, contaminant, mu)
    const size = sizeAt(scene, piece, CHANCE_NINE_IN_TEN)
    const food = displacedFood(pack, contaminant.placement)
    const direct = (d: number) =>
      dPrimeDirect(
        scene.channels,
        pack,
        scene.observer.imaging,
        {
          shape: contaminant.shape,
          muPerMm: mu,
          food,
          lengthMm: contaminant.lengthMm ?? 0,
          gatheredMm: constants.gatheredWireMm,
          faceMm2: contaminant.faceMm2 ?? 0,
        },
        d,
      ) /
      (piece.threshold(d) + CHANCE_NINE_IN_TEN)
    if (size === null) {
      if (direct(scene.limitMm) > 1.01) only.push(JSON.stringify(one))
      continue
    }
    const slope = Math.log(direct(size * SLOPE_STEP) / direct(size / SLOPE_STEP)) / (2 * Math.log(SLOPE_STEP))
    differences.push(Math.abs(Math.log(direct(size)) / slope))
    for (let d = size * LADDER; d < scene.limitMm; d *= LADDER)
      if (direct(d) < 1) only.push(`${d} mm of ${JSON.stringify(one)}`)
  }
  return { differences: differences.sort((a, b) => a - b), only }
}

if (process.argv[1]?.endsWith('agreement.ts')) {
  const { differences, only } = agreement(520, 20)
  const percent = (share: number) =>
    `${(100 * differences[Math.floor(share * (differences.length - 1))]!).toFixed(3)} %`
  console.log(
    `${differences.length} sizes: median difference ${percent(0.5)}, 99 in 100 within ${percent(0.99)}, worst ${percent(1)}; only one form has a size: ${only.length}`,
  )
  for (const one of only) console.log(one)
}
