import type { XrayMachine } from '../../contract/index.ts'
import type { XraySetting } from '../assessment.ts'
import { fluencePerMm2 } from './beam-quality.ts'
import { BIN_COUNT } from './energy-bins.ts'
import { filteredSpectrum, openBeam, type XrayBuild } from './exposure.ts'

/** Step between the tube voltages that are tried, kV. */
export const KV_STEP = 5

/** Tube voltages a machine may run at: its fixed one, or its range in steps with both ends. */
export function voltagesOf(machine: XrayMachine): number[] {
  if (machine.kV !== undefined) return [machine.kV]
  const [low, high] = machine.kVRange!
  const steps: number[] = [low]
  for (let kV = (Math.floor(low / KV_STEP) + 1) * KV_STEP; kV < high; kV += KV_STEP) steps.push(kV)
  if (high > low) steps.push(high)
  return steps
}

/**
 * Tube current at a voltage, mA: the machine's own, else min(maxMA, maxPowerW / kV); cut where the open beam
 * would exceed the detector's count rate or the full well of a pixel.
 */
export function settingAt(
  machine: XrayMachine,
  build: XrayBuild,
  kV: number,
  speedMPerMin: number,
): XraySetting {
  let mA = machine.mA ?? machine.maxMA ?? Number.POSITIVE_INFINITY
  let currentLimit: XraySetting['currentLimit'] = machine.mA === undefined ? 'current' : 'given'
  const lower = (limit: number, why: XraySetting['currentLimit']) => {
    if (limit < mA) {
      mA = limit
      currentLimit = why
    }
  }
  if (machine.maxPowerW !== undefined) lower(machine.maxPowerW / kV, 'power')
  if (machine.maxMA !== undefined && machine.mA !== undefined) lower(machine.maxMA, 'current')
  if (machine.maxCountsPerMm2S !== undefined) {
    const perMa = fluencePerMm2(filteredSpectrum(build, kV)) * (1000 / build.sourceToDetectorMm) ** 2
    lower(machine.maxCountsPerMm2S / perMa, 'count rate')
  }
  if (machine.fullWellElectrons !== undefined && machine.detectorLayers) {
    const perMa = openBeam(build, kV, 1, speedMPerMin)
    machine.detectorLayers.forEach((layer, c) => {
      const response = build.channels[c]!
      let keV = 0
      for (let i = 0; i < BIN_COUNT; i++) keV += perMa[i]! * response.absorbed[i]! * response.recorded[i]!
      if (keV > 0) lower(machine.fullWellElectrons! / (keV * layer.electronsPerKeV), 'full well')
    })
  }
  return { kV, mA, currentLimit }
}
