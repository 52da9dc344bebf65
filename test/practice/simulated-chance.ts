import type { Contaminant, Point, XrayMachine } from '../../src/contract/index.ts'
import { buildOf } from '../../src/xray/beam/exposure.ts'
import { randomStream } from '../../src/xray/image/food/random.ts'
import { drawPack } from '../../src/xray/image/pack/drawn-pack.ts'
import { type ExposedPack, exposePack } from '../../src/xray/image/pack/exposed-pack.ts'
import type { Piece } from '../../src/xray/image/pack/piece.ts'
import { takeRadiograph } from '../../src/xray/image/pack/radiograph.ts'
import { readDepthMm, type View } from '../../src/xray/image/pack/view.ts'
import { backgroundFor, backgroundPasses } from '../../src/xray/image/read/background.ts'
import { type FoodCurve, foodCurve, slopeOf } from '../../src/xray/image/read/cancel-food.ts'
import { type MeasuredNoise, measureNoise } from '../../src/xray/image/read/measured-noise.ts'
import {
  inverseOfKnown,
  inverseOfMeasured,
  type NoiseInverse,
} from '../../src/xray/image/read/noise-inverse.ts'
import { transformPicture } from '../../src/xray/image/read/picture-transform.ts'
import { type ReadArea, readArea } from '../../src/xray/image/read/read-area.ts'
import { readRadiograph } from '../../src/xray/image/read/reading.ts'
import { scoreMaps } from '../../src/xray/image/read/score-map.ts'
import { scoreReading } from '../../src/xray/image/read/scoring.ts'
import { kindsOf, templateOf } from '../../src/xray/image/read/template.ts'
import { noiseAt, noiseMatrix } from '../../src/xray/noise/noise.ts'
import { IDEAL } from '../../src/xray/observer/practice.ts'
import { chanceOf, objectIn, setScene } from '../../src/xray/observer/scene.ts'
import { materialAttenuation } from '../../src/xray/places/pack-in-beam.ts'

/** One comparison: a machine at a setting, one point, one contaminant. */
export interface Trial {
  readonly machine: XrayMachine
  readonly point: Point
  readonly setting: { readonly kV: number; readonly mA: number }
  readonly contaminant: Contaminant
  readonly packs: number
  readonly seed: number
  /** Noise of the filter: as the model has it, or as packs without pieces show it on average. */
  readonly noise: 'model' | 'clean packs'
  /** Distance of the pieces on a pack, mm. */
  readonly spacingMm: number
  /** Leaves out the machine's own reading of each pack. */
  readonly withoutReading?: boolean
}

/** Found shares at the sizes tried. */
export interface Curves {
  readonly sizesMm: readonly number[]
  /** Φ(d′ − z) of the computed observer, ideal constants. */
  readonly computed: readonly number[]
  /** Share above the same z of a filter that knows size, place and noise. */
  readonly known: readonly number[]
  /** Share found by the reading of the whole picture, noise measured from that picture. */
  readonly read: readonly number[]
  readonly pieces: number
}

const CLEAN_PACKS = 3
const CLEAN_SEED = 900_000

function gridOfPieces(view: View, trial: Trial, sizeMm: number, seed: number): Piece[] {
  const random = randomStream(seed, 'places of the pieces')
  const { contaminant, spacingMm } = trial
  const pieces: Piece[] = []
  for (let v = spacingMm / 2; v < view.vMm; v += spacingMm) {
    for (let u = spacingMm / 2; u < view.uMm; u += spacingMm) {
      if (readDepthMm(view, u, v) < 7) continue
      const at = { u: u + 2 * random.uniform() - 1, v: v + 2 * random.uniform() - 1 }
      pieces.push({
        contaminant: 0,
        material: contaminant.material,
        shape: contaminant.shape,
        sizeMm,
        lengthMm: contaminant.lengthMm ?? 0,
        faceMm2: contaminant.faceMm2 ?? 0,
        placement: contaminant.placement,
        ...at,
        angle: 0,
      })
    }
  }
  return pieces
}

/** The model's noise in the channels of the read area (food cancelled in all but the last, flattened). */
export function modelNoise(exposed: ExposedPack, curve: FoodCurve): NoiseInverse {
  const { channels, pack, objectPixelMm, observer } = exposed
  const n = channels.count
  const k = new Float64Array(n * n)
  const background = backgroundFor(objectPixelMm)
  const turn = (i: number, j: number) => (i === j ? 1 : j === n - 1 && i < n - 1 ? -slopeOf(curve, i) : 0)
  return inverseOfKnown(n, objectPixelMm, (f, into) => {
    noiseMatrix(k, noiseAt(f, pack, observer.imaging), channels, pack, observer.imaging)
    const kept = Math.max(1e-3, 1 - backgroundPasses(background, f * objectPixelMm)) ** 2
    into.fill(0)
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++)
        for (let a = 0; a < n; a++)
          for (let b = 0; b < n; b++) into[i * n + j]! += kept * turn(i, a) * k[a * n + b]! * turn(j, b)
  })
}

function meanNoise(noises: readonly MeasuredNoise[]): MeasuredNoise {
  const covariance = noises[0]!.covariance.map(
    (_, i) => noises.reduce((sum, n) => sum + n.covariance[i]!, 0) / noises.length,
  )
  return { ...noises[0]!, covariance }
}

/** Value of a map at a place between its pixels (Lanczos window of four pixels). */
function between(scores: Float32Array, area: ReadArea, u: number, v: number): number {
  const { pixels } = area
  const x = (u - pixels.leftMm) / pixels.pitchMm - 0.5
  const y = (v - pixels.topMm) / pixels.pitchMm - 0.5
  const kernel = (t: number) => {
    if (t === 0) return 1
    if (Math.abs(t) >= 4) return 0
    return (4 * Math.sin(Math.PI * t) * Math.sin((Math.PI * t) / 4)) / (Math.PI * t) ** 2
  }
  let sum = 0
  let weight = 0
  for (let row = Math.floor(y) - 3; row <= Math.floor(y) + 4; row++) {
    for (let column = Math.floor(x) - 3; column <= Math.floor(x) + 4; column++) {
      const w = kernel(row - y) * kernel(column - x)
      sum += w * scores[row * pixels.columns + column]!
      weight += w
    }
  }
  return sum / weight
}

/** Chance of finding by computation and by simulation at the given sizes. */
export function chanceCurves(trial: Trial, sizesMm: readonly number[]): Curves {
  const { machine, point, setting, contaminant } = trial
  const build = buildOf(machine)
  const exposed = exposePack(machine, build, point, setting)
  const curve = foodCurve(exposed)
  const scene = setScene(build, point, exposed.pack, setting, IDEAL)
  const object = objectIn(scene, contaminant, materialAttenuation(contaminant.material))
  const kind = kindsOf(exposed, [contaminant], IDEAL.gatheredWireMm)[0]!
  const clean = Array.from({ length: CLEAN_PACKS }, (_, k) => {
    const pack = drawPack(point, build.beam, CLEAN_SEED + trial.seed + k)
    return readArea(pack.view, takeRadiograph(exposed, pack, []), curve)
  })
  const inverse =
    trial.noise === 'model'
      ? modelNoise(exposed, curve)
      : inverseOfMeasured(
          meanNoise(clean.map((area) => measureNoise(area, area.mask, false))),
          exposed.objectPixelMm,
        )
  const endPerMm = Math.SQRT1_2 / exposed.objectPixelMm
  const answers = sizesMm.map((sizeMm) => {
    const template = templateOf(exposed, curve, kind, sizeMm, 0, endPerMm)
    const answer = (area: ReadArea) =>
      scoreMaps(area, area.mask, transformPicture(exposed, area), [template], inverse)[0]!
    // A map comes divided by its own noise; packs without pieces say what that noise is.
    const squares = clean.map((area) => answer(area).sigma ** 2)
    return { answer, sigma: Math.sqrt(squares.reduce((sum, v) => sum + v, 0) / squares.length) }
  })
  const known = sizesMm.map(() => 0)
  const read = sizesMm.map(() => 0)
  let pieces = 0
  for (let k = 0; k < trial.packs; k++) {
    const drawn = drawPack(point, build.beam, trial.seed + k)
    sizesMm.forEach((sizeMm, s) => {
      const seed = trial.seed + 1000 * (s + 1) + k
      // The same food for every size; noise and places of the pieces of their own.
      const pack = { ...drawn, seed }
      const placed = gridOfPieces(pack.view, trial, sizeMm, seed)
      const picture = takeRadiograph(exposed, pack, placed)
      const area = readArea(pack.view, picture, curve)
      const { answer, sigma } = answers[s]!
      const map = answer(area)
      if (s === 0) pieces += placed.length
      known[s]! += placed.filter(
        (piece) => (between(map.scores, area, piece.u, piece.v) * map.sigma) / sigma > scene.thresholdZ,
      ).length
      if (trial.withoutReading) return
      const reading = readRadiograph(exposed, pack.view, picture, [contaminant], {
        gatheredWireMm: IDEAL.gatheredWireMm,
        falseRejectsPerPack: point.falseRejectsPerPack,
      })
      read[s]! += scoreReading(reading, placed).results.filter((r) => r.found).length
    })
  }
  return {
    sizesMm,
    computed: sizesMm.map((d) => chanceOf(scene, object, d)),
    known: known.map((n) => n / pieces),
    read: read.map((n) => n / pieces),
    pieces,
  }
}

/** Size found with a chance of one half: logistic curve over ln size, maximum likelihood (Newton). */
export function halfSizeMm(sizesMm: readonly number[], share: readonly number[], tries: number): number {
  const x = sizesMm.map(Math.log)
  const centre = x.reduce((sum, v) => sum + v, 0) / x.length
  let a = 0
  let b = 8
  for (let round = 0; round < 60; round++) {
    let [ga, gb, haa, hab, hbb] = [0, 0, 1e-9, 0, 1e-9]
    x.forEach((v, i) => {
      const t = v - centre
      const p = 1 / (1 + Math.exp(-(a + b * t)))
      const r = tries * (share[i]! - p)
      const w = tries * p * (1 - p)
      ga += r
      gb += r * t
      haa += w
      hab += w * t
      hbb += w * t * t
    })
    const det = haa * hbb - hab * hab
    a += Math.max(-2, Math.min(2, (hbb * ga - hab * gb) / det))
    b += Math.max(-5, Math.min(5, (haa * gb - hab * ga) / det))
  }
  return Math.exp(centre - a / b)
}
