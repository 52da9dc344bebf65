import { gaussLegendre } from '../../numerics/gauss-legendre.ts'
import { recent } from '../../numerics/recent.ts'
import type { Channels, PackInBeam } from '../detector/channels.ts'
import { type Imaging, invertSymmetric, modulationTransfer, noiseParts } from '../noise/noise.ts'
import { grainKnots, grainNoisePower, UNEVENNESS_LONGEST_MM, unevennessNoisePower } from '../noise/texture.ts'

/**
 * Hotelling observer over the channels (Barrett & Myers 2004, Foundations of Image Science, ch. 13):
 * d′² = ∫ 2πf·Sᵀ K⁻¹ S df for spheres and flakes, ℓ·2∫ Sᵀ K⁻¹ S df for wires, up to the pixel's Nyquist
 * frequency. A filter gathers at least as much along a wire as the wire is thick. The noise is worked out once per image; each size then costs a few microseconds.
 */
export interface Observer {
  readonly channels: Channels
  readonly pack: PackInBeam
  readonly imaging: Imaging
  readonly frequencies: Float64Array
  /** Quadrature weight × MTF² at each frequency, × 2 for wires and × 2πf for spheres and flakes. */
  readonly lineWeights: Float64Array
  readonly areaWeights: Float64Array
  /** MTF² and noise power of the grain, mm⁴, at each frequency. */
  readonly seen: Float64Array
  readonly grain: Float64Array
  /** K⁻¹ at each frequency, count × count numbers each. */
  readonly inverse: Float64Array
  /** The same observer on finer frequencies, for large objects, whose transforms swing fast; made when asked for. */
  readonly finer: () => Observer
  /** The same on frequencies that resolve the shadow of one grain some way around it. */
  readonly overBed: () => Observer
  /** From which size on an object is large in that sense, mm, and how far its d′ may be off without. */
  readonly large: { readonly fromMm: number; readonly offBy: number }
}

/**
 * Above these sizes, mm, the usual frequencies are too coarse, and how far d′ may be off there (natural logarithm,
 * twice what was seen): at fine pixels and at others.
 */
const LARGE_AT_FINE_PIXELS = { fromMm: 8, offBy: 0.25 }
const LARGE_AT_OTHERS = { fromMm: 12, offBy: 0.05 }
const FINE_PIXEL_MM = 0.5
/** Points per swing of the largest objects' transforms, and besides, in a panel of the finer observer. */
const POINTS_PER_SWING = 3
const POINTS_BESIDES = 4
/** Points over the bed: besides, and per unit of frequency, mm of grain and mm around. */
const LEAST_OVER_BED = 6
const PER_GRAIN = 2.8
const BESIDES_MM = 22
/** The larger node of the spread of the largest size spoken of, mm. */
const LARGEST_MM = 36

/** Quadrature points of a panel by its width in 1/mm: a narrow one holds no full swing of a transform. */
function pointsFor(widthPerMm: number): number {
  if (widthPerMm < 0.045) return 3
  return widthPerMm < 0.1 ? 5 : 8
}

function frequencyPanels(nyquist: number, grainMm: number): [number, number, number][] {
  const coarse = [0, 1 / UNEVENNESS_LONGEST_MM, 0.1, 0.17, 0.25, 0.37, 0.55, 0.8, 1.2, 1.8, 2.8]
  const knots = grainMm > 0 ? grainKnots.map((x) => x / grainMm) : []
  const inside = [...new Set([...coarse, ...knots])].filter((f) => f < nyquist).sort((a, b) => a - b)
  return inside.map((from, i) => {
    const to = inside[i + 1] ?? nyquist
    return [from, to, pointsFor(to - from)]
  })
}

/** Frequencies of an observer, quadrature weights, and the noise powers there that many images share. */
interface Grid {
  readonly frequencies: Float64Array
  readonly widths: Float64Array
  /** Noise power of grain per mm of path and of a thickness that varies by 1 mm, mm⁴ (texture scale 1). */
  readonly grainPerMm: Float64Array
  readonly unevenness: Float64Array
}
type Fineness = 'usual' | 'finer' | 'over bed'

const grids = recent<Grid>(24)

/** The grid asked for last: images of one machine and food follow one another. */
let latest: {
  fineness: Fineness
  objectPixelMm: number
  grainMm: number
  packing: number
  grid: Grid
} | null = null

function gridOf(fineness: Fineness, objectPixelMm: number, { grainMm, packing }: PackInBeam): Grid {
  if (
    latest?.fineness === fineness &&
    latest.objectPixelMm === objectPixelMm &&
    latest.grainMm === grainMm &&
    latest.packing === packing
  )
    return latest.grid
  const grid = grids([fineness, objectPixelMm, grainMm, packing].join(), () => {
    const nyquist = 1 / (2 * objectPixelMm)
    const panels = frequencyPanels(nyquist, grainMm).map(([from, to, points]) => {
      const rule = gaussLegendre(fineness === 'usual' ? points : finerThan(to - from))
      const middle = (to + from) / 2
      const half = (to - from) / 2
      return {
        frequencies: rule.nodes.map((x) => middle + half * x),
        widths: rule.weights.map((w) => 2 * half * w),
      }
    })
    const { frequencies, widths } = fineness === 'over bed' ? overAll(nyquist, grainMm) : joined(panels)
    return {
      frequencies,
      widths,
      grainPerMm: frequencies.map((f) => (grainMm > 0 ? grainNoisePower(f, grainMm, packing, 1) : 0)),
      unevenness: frequencies.map((f) => unevennessNoisePower(f, 1)),
    }
  })
  latest = { fineness, objectPixelMm, grainMm, packing, grid }
  return grid
}

const finerThan = (widthPerMm: number) =>
  Math.ceil(POINTS_BESIDES + POINTS_PER_SWING * LARGEST_MM * widthPerMm)

const joined = (panels: { frequencies: Float64Array; widths: Float64Array }[]) => ({
  frequencies: Float64Array.from(panels.flatMap((panel) => [...panel.frequencies])),
  widths: Float64Array.from(panels.flatMap((panel) => [...panel.widths])),
})

/** One rule over all frequencies: its points crowd at the low ones, where food and walls are uneven. */
function overAll(nyquist: number, grainMm: number) {
  const rule = gaussLegendre(Math.ceil(LEAST_OVER_BED + nyquist * (PER_GRAIN * grainMm + BESIDES_MM)))
  return {
    frequencies: rule.nodes.map((x) => ((x + 1) * nyquist) / 2),
    widths: rule.weights.map((w) => w * nyquist),
  }
}

/** Sets up the observer for one image: channels behind a pack, and how it is imaged. */
export function prepareObserver(channels: Channels, pack: PackInBeam, imaging: Imaging): Observer {
  return observerOn('usual', channels, pack, imaging)
}

function observerOn(fineness: Fineness, channels: Channels, pack: PackInBeam, imaging: Imaging): Observer {
  const { frequencies, widths, grainPerMm, unevenness } = gridOf(fineness, imaging.objectPixelMm, pack)
  const total = frequencies.length
  const n = channels.count
  const room = new Float64Array(total * (4 + n * n))
  const [lineWeights, areaWeights, seen, grain] = [0, 1, 2, 3].map((i) =>
    room.subarray(i * total, (i + 1) * total),
  ) as [Float64Array, Float64Array, Float64Array, Float64Array]
  const inverse = room.subarray(4 * total)
  const k = new Float64Array(n * n)
  const { perGrain, perUnevenness, white } = noiseParts(channels, pack, imaging)
  for (let q = 0; q < total; q++) {
    const f = frequencies[q]!
    const through = modulationTransfer(f, imaging.objectPixelMm, imaging.blurPixels) ** 2
    seen[q] = through
    grain[q] = imaging.textureScale * grainPerMm[q]! * pack.pathMm
    lineWeights[q] = widths[q]! * through
    areaWeights[q] = lineWeights[q]! * Math.PI * f
    const ofGrain = through * grainPerMm[q]! * pack.pathMm
    const uneven = through * unevenness[q]!
    for (let i = 0; i < n * n; i++) k[i] = ofGrain * perGrain[i]! + uneven * perUnevenness[i]! + white[i]!
    invertSymmetric(k, n)
    for (let i = 0; i < n * n; i++) inverse[q * n * n + i] = k[i]!
  }
  const madeOnce = (which: Fineness) => {
    let made: Observer | undefined
    return () => {
      made ??= observerOn(which, channels, pack, imaging)
      return made
    }
  }
  const [finer, overBed] = [madeOnce('finer'), madeOnce('over bed')]
  const large = imaging.objectPixelMm < FINE_PIXEL_MM ? LARGE_AT_FINE_PIXELS : LARGE_AT_OTHERS
  return {
    channels,
    pack,
    imaging,
    frequencies,
    lineWeights,
    areaWeights,
    seen,
    grain,
    inverse,
    finer,
    overBed,
    large,
  }
}
