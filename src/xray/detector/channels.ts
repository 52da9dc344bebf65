import { BIN_COUNT, binKeV } from '../beam/energy-bins.ts'
import type { ChannelResponse } from './detector.ts'

/** A packaging part (or the belt) as the beam sees it. */
export interface CrossedPart {
  readonly muPerMm: Float64Array
  readonly mm: number
  readonly crossings: number
  readonly unevennessMm: number
}

/** Food and pack as the beam sees them. Lengths in mm, attenuation on the energy bins in 1/mm. */
export interface PackInBeam {
  readonly solidMuPerMm: Float64Array
  readonly pathMm: number
  /** Solid fraction along the path: 1 for solids and liquids. */
  readonly packing: number
  /** Grain diameter (plate thickness); 0 where the food has no grains. */
  readonly grainMm: number
  readonly unevennessMm: number
  readonly parts: readonly CrossedPart[]
}

/** The detector's channels behind one pack: everything later steps need to know of the photons. */
export interface Channels {
  readonly count: number
  /** Number of energy bins below the tube voltage. */
  readonly bins: number
  /** Response weights per channel and bin; each channel sums to 1. */
  readonly weights: readonly Float64Array[]
  /** Relative noise density of photons and of read noise, mm², per channel. */
  readonly photonNoise: readonly number[]
  readonly readNoise: readonly number[]
  /** Attenuation of the solid food weighted in the channel, 1/mm. */
  readonly foodMu: readonly number[]
  /** The same for each part: [part][channel]. */
  readonly partMu: readonly (readonly number[])[]
  /** Mean signal per pixel and line, keV (counts for a counting channel). */
  readonly signal: readonly number[]
  readonly meanEnergyKeV: readonly number[]
}

/** Attenuation exponent of food and pack together on the bins (dimensionless). */
export function packExponent(pack: PackInBeam, bins: number): Float64Array {
  const exponent = new Float64Array(bins)
  const solidMm = pack.packing * pack.pathMm
  for (let i = 0; i < bins; i++) exponent[i] = pack.solidMuPerMm[i]! * solidMm
  for (const part of pack.parts) {
    const mm = part.mm * part.crossings
    for (let i = 0; i < bins; i++) exponent[i]! += part.muPerMm[i]! * mm
  }
  return exponent
}

/**
 * Signals, noise and weights behind a pack.
 * openBeam: photons per pixel, line and bin; objectPixelMm: a, mm.
 * Signal S = Σ N·absorbed·recorded; variance V = Σ N·absorbed·recorded²/swank + readNoise²;
 * relative noise density q = V/S²·a² (mm²).
 * A channel that no photon reaches carries no information and is left out.
 */
export function channelsBehind(
  openBeam: Float64Array,
  pack: PackInBeam,
  responses: readonly ChannelResponse[],
  objectPixelMm: number,
): Channels {
  let bins = BIN_COUNT
  while (bins > 1 && openBeam[bins - 1] === 0) bins--
  const reaching = packExponent(pack, bins)
  for (let i = 0; i < bins; i++) reaching[i] = openBeam[i]! * Math.exp(-reaching[i]!)
  const area = objectPixelMm ** 2
  const weights: Float64Array[] = []
  const photonNoise: number[] = []
  const readNoise: number[] = []
  const foodMu: number[] = []
  const signal: number[] = []
  const meanEnergyKeV: number[] = []
  const partMu: number[][] = pack.parts.map(() => [])
  for (const response of responses) {
    const w = new Float64Array(bins)
    let s = 0
    let v = 0
    for (let i = 0; i < bins; i++) {
      const recorded = response.recorded[i]!
      const contribution = reaching[i]! * response.absorbed[i]! * recorded
      w[i] = contribution
      s += contribution
      v += contribution * recorded
    }
    if (!(s > 0)) continue
    let energy = 0
    let mu = 0
    for (let i = 0; i < bins; i++) {
      w[i]! /= s
      energy += w[i]! * binKeV(i)
      mu += w[i]! * pack.solidMuPerMm[i]!
    }
    pack.parts.forEach((part, p) => {
      let sum = 0
      for (let i = 0; i < bins; i++) sum += w[i]! * part.muPerMm[i]!
      partMu[p]!.push(sum)
    })
    weights.push(w)
    signal.push(s)
    meanEnergyKeV.push(energy)
    foodMu.push(mu)
    photonNoise.push((v / response.swank / s ** 2) * area)
    readNoise.push((response.readNoise / s) ** 2 * area)
  }
  return {
    count: weights.length,
    bins,
    weights,
    photonNoise,
    readNoise,
    foodMu,
    partMu,
    signal,
    meanEnergyKeV,
  }
}
