import type { DetectorLayer } from '../../contract/index.ts'
import { materials } from '../../reference/index.ts'
import {
  BIN_COUNT,
  binKeV,
  linearAttenuation,
  massAttenuation,
  massEnergyAbsorption,
} from '../beam/energy-bins.ts'
import { filterAttenuation } from '../beam/filters.ts'

/**
 * What one channel of a detector does with a photon that reaches the stack, per energy bin.
 * Photons never come back: layers are met in order, with copper between where the machine has it.
 */
export interface ChannelResponse {
  /** Photons absorbed in this channel per photon reaching the stack (transmission of what lies above included). */
  readonly absorbed: Float64Array
  /** Energy recorded per absorbed photon, keV (1 for a counting channel). */
  readonly recorded: Float64Array
  readonly swank: number
  /** Read noise in the unit of the recorded signal: keV (0 for a counting channel). */
  readonly readNoise: number
}

function scintillatorCurves(name: string) {
  const material = materials.get(name)
  if (!material) throw new RangeError(`no such sensor material: ${name}`)
  const muRho = massAttenuation(material.massFractions)
  const muEnRho = massEnergyAbsorption(material.massFractions)
  // Half of the energy that leaves as fluorescence or scatter is taken as reabsorbed (assumption).
  const recorded = muRho.map((mu, i) => {
    const share = Math.min(1, Math.max(0, muEnRho[i]! / mu))
    return binKeV(i) * (share + (1 - share) / 2)
  })
  return { muRho, recorded }
}

const keptCurves = new Map<string, ReturnType<typeof scintillatorCurves>>()
function curvesOf(name: string) {
  let curves = keptCurves.get(name)
  if (!curves) {
    curves = scintillatorCurves(name)
    keptCurves.set(name, curves)
  }
  return curves
}

/**
 * Energy-integrating scintillator layers, first met first. Absorption is narrow-beam,
 * 1 − exp(−(μ/ρ)·coverage); coverage in mg/cm², copper in mm.
 */
export function scintillatorChannels(layers: readonly DetectorLayer[]): ChannelResponse[] {
  const reaching = new Float64Array(BIN_COUNT).fill(1)
  const copper = filterAttenuation('copper')
  return layers.map((layer) => {
    const { muRho, recorded } = curvesOf(layer.scintillator)
    const copperMm = layer.copperBeforeMm ?? 0
    const absorbed = new Float64Array(BIN_COUNT)
    for (let i = 0; i < BIN_COUNT; i++) {
      reaching[i]! *= Math.exp(-copper[i]! * copperMm)
      const through = Math.exp((-muRho[i]! * layer.mgPerCm2) / 1000)
      absorbed[i] = reaching[i]! * (1 - through)
      reaching[i]! *= through
    }
    return {
      absorbed,
      recorded,
      swank: layer.swank,
      readNoise: layer.noiseElectrons / layer.electronsPerKeV,
    }
  })
}

/**
 * Photon counting with ideal energy windows (keV): no charge sharing, no pile-up, no overlap, no read
 * noise. A bin belongs to a window when its centre does.
 */
export function countingChannels(
  windowsKeV: readonly (readonly [number, number])[],
  sensor: string,
  sensorMm: number,
): ChannelResponse[] {
  const material = materials.get(sensor)
  if (!material) throw new RangeError(`no such sensor material: ${sensor}`)
  const mu = linearAttenuation(material.massFractions, material.densityGPerCm3)
  const recorded = new Float64Array(BIN_COUNT).fill(1)
  return windowsKeV.map(([from, to]) => ({
    absorbed: mu.map((m, i) => {
      const inside = binKeV(i) >= from && binKeV(i) < to
      return inside ? 1 - Math.exp(-m * sensorMm) : 0
    }),
    recorded,
    swank: 1,
    readNoise: 0,
  }))
}
