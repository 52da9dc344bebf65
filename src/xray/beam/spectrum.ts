import { bremsstrahlung } from '../../reference/index.ts'
import { muRhoElement } from './attenuation.ts'
import { BIN_COUNT, binKeV, binsBelow } from './energy-bins.ts'

/**
 * Tungsten tube, 20 to 150 kV: tabulated thick-target bremsstrahlung plus K lines.
 *
 * Electrons slow down continuously (Bethe collision stopping power, no density effect), radiate by the
 * scaled cross section of Seltzer & Berger 1985/86, and the photons leave through the tungsten above
 * the mean depth. Three effective numbers (depth 0.17, loss 0.77, K yield 0.48) were fitted once to
 * published half-value layers; they belong to the 160-point grid below. Absolute output ±25 %.
 */
const ELECTRON_REST_KEV = 510.999
const MEAN_EXCITATION_KEV = 0.727
const ATOMS_PER_G = 6.02214076e23 / 183.84
const ATOMIC_NUMBER = 74
const CLASSICAL_RADIUS_CM = 2.8179403e-13
const ELECTRONS_PER_MAS = 6.241509e15
const DEPTH_SHARE = 0.17
const ESCAPE_LOSS = 0.77
const K_YIELD = 0.48
const GRID_POINTS = 160
const GRID_START_KEV = 2
const BIN_LOWER_EDGE_KEV = 8

function betaSquared(tKeV: number): number {
  const tau = tKeV / ELECTRON_REST_KEV
  return (tau * (tau + 2)) / (tau + 1) ** 2
}

/** Collision stopping power of tungsten for electrons, keV cm²/g, T in keV (Bethe; guarded below 2 keV). */
export function stoppingPower(tKeV: number): number {
  const tau = tKeV / ELECTRON_REST_KEV
  const b2 = betaSquared(tKeV)
  const f = 1 - b2 + (tau ** 2 / 8 - (2 * tau + 1) * Math.LN2) / (tau + 1) ** 2
  const argument = (tau ** 2 * (tau + 2)) / (2 * (MEAN_EXCITATION_KEV / ELECTRON_REST_KEV) ** 2)
  const logarithm = Math.log(Math.max(argument, 1.2))
  const prefactor = 2 * Math.PI * CLASSICAL_RADIUS_CM ** 2 * ELECTRON_REST_KEV * ATOMS_PER_G * ATOMIC_NUMBER
  return (prefactor / b2) * Math.max(logarithm + f, 0.3)
}

/** Where an electron energy T (keV) lies in the table: the row below and the share of the next, log-linear in T. */
function tableRow(tKeV: number): { row: number; share: number } {
  const { electronEnergyKeV } = bremsstrahlung
  const t = Math.min(200, Math.max(5, tKeV))
  let row = 0
  while (row < electronEnergyKeV.length - 2 && t >= electronEnergyKeV[row + 1]!) row++
  const t0 = Math.log(electronEnergyKeV[row]!)
  return { row, share: (Math.log(t) - t0) / (Math.log(electronEnergyKeV[row + 1]!) - t0) }
}

/** The cross section at a row of the table and fraction u = k/T (linear in u). */
function crossSectionAt({ row, share }: ReturnType<typeof tableRow>, u: number): number {
  const { photonFraction, chiMb } = bremsstrahlung
  let column = 0
  while (column < photonFraction.length - 2 && u >= photonFraction[column + 1]!) column++
  const u0 = photonFraction[column]!
  const shareU = (u - u0) / (photonFraction[column + 1]! - u0)
  const low = chiMb[row]!
  const high = chiMb[row + 1]!
  const atLow = low[column]! * (1 - shareU) + low[column + 1]! * shareU
  const atHigh = high[column]! * (1 - shareU) + high[column + 1]! * shareU
  return atLow * (1 - share) + atHigh * share
}

/** Scaled bremsstrahlung cross section (β²/Z²) k dσ/dk, mb, for electron energy T keV and fraction u = k/T. */
export function scaledCrossSection(tKeV: number, u: number): number {
  return crossSectionAt(tableRow(tKeV), u)
}

/** Photons / mm² / mAs / keV at 1 m on the bins, vacuum, no filter; zero above the tube voltage. */
function computeSpectrum(kV: number, anodeAngleDeg: number): Float64Array {
  const step = (kV - GRID_START_KEV) / (GRID_POINTS - 1)
  const energies = Float64Array.from({ length: GRID_POINTS }, (_, i) => GRID_START_KEV + i * step)
  const stopping = energies.map(stoppingPower)
  const range = new Float64Array(GRID_POINTS)
  for (let i = 1; i < GRID_POINTS; i++) {
    range[i] = range[i - 1]! + (step / 2) * (1 / stopping[i - 1]! + 1 / stopping[i]!)
  }
  const sine = Math.sin((anodeAngleDeg * Math.PI) / 180)
  const escapePath = range.map((r) => (DEPTH_SHARE * (range[GRID_POINTS - 1]! - r)) / sine)
  const kept = energies.map((t) => 1 - ESCAPE_LOSS * (1 - (t / kV) ** 3))
  const strength = ATOMS_PER_G * ATOMIC_NUMBER ** 2 * 1e-27
  const rows = Array.from(energies, tableRow)
  const factors = energies.map((t, i) => (strength / betaSquared(t)) * (kept[i]! / stopping[i]!))
  const emission = (k: number, i: number) => (factors[i]! * crossSectionAt(rows[i]!, k / energies[i]!)) / k

  const spectrum = new Float64Array(BIN_COUNT)
  const count = binsBelow(kV)
  const aboveK = new Float64Array(GRID_POINTS)
  for (let b = 0; b < count; b++) {
    const k = binKeV(b)
    const mu = muRhoElement('W', k)
    const start = energies.findIndex((t) => t >= k)
    if (start < 0 || GRID_POINTS - start < 2) continue
    let previous = 0
    for (let i = start; i < GRID_POINTS; i++) {
      const w = emission(k, i)
      if (k > bremsstrahlung.kEdgeKeV) aboveK[i]! += w
      const value = w * Math.exp(-mu * escapePath[i]!)
      if (i > start) spectrum[b]! += (step / 2) * (previous + value)
      previous = value
    }
  }
  if (kV > 70) {
    for (const line of bremsstrahlung.kLines) {
      const mu = muRhoElement('W', line.energyKeV)
      let sum = 0
      for (let i = 0; i < GRID_POINTS; i++) {
        const edge = i === 0 || i === GRID_POINTS - 1 ? 0.5 : 1
        sum += edge * step * aboveK[i]! * Math.exp(-mu * escapePath[i]!)
      }
      const bin = Math.floor(line.energyKeV - BIN_LOWER_EDGE_KEV)
      if (bin < count) spectrum[bin]! += K_YIELD * line.share * sum
    }
  }
  const perMas = (ELECTRONS_PER_MAS / (4 * Math.PI)) * 1e-6
  return spectrum.map((n) => n * perMas)
}

const kept = new Map<string, Float64Array>()

/**
 * Unfiltered fluence of a tungsten tube on the energy bins: photons / mm² / mAs / keV at 1 m.
 * kV 20 to 150, anode angle in degrees. Results are kept; treat them as read-only.
 */
export function tubeSpectrum(kV: number, anodeAngleDeg: number): Float64Array {
  const key = `${kV}/${anodeAngleDeg}`
  let spectrum = kept.get(key)
  if (!spectrum) {
    if (!(kV >= 20 && kV <= 150)) throw new RangeError(`tube voltage must be 20 to 150 kV; ${kV} was given`)
    spectrum = computeSpectrum(kV, anodeAngleDeg)
    if (kept.size > 500) kept.clear()
    kept.set(key, spectrum)
  }
  return spectrum
}
