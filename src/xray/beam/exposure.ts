import type { XrayMachine } from '../../contract/index.ts'
import { recent } from '../../numerics/recent.ts'
import { type ChannelResponse, countingChannels, scintillatorChannels } from '../detector/detector.ts'
import { BIN_COUNT } from './energy-bins.ts'
import { behindFilters } from './filters.ts'
import { tubeSpectrum } from './spectrum.ts'

/** A machine with every value present: what the chain needs, in its own units. */
export interface XrayBuild {
  readonly sourceToDetectorMm: number
  readonly magnification: number
  readonly pixelMm: number
  readonly filterAlMm: number
  readonly windowBeMm: number
  readonly anodeAngleDeg: number
  readonly blurPixels: number
  readonly beam: 'down' | 'side'
  readonly views: number
  readonly tiltDeg: number
  readonly beltMm: number
  readonly beamWidthMm: number
  readonly maxLinesPerSecond: number | null
  readonly channels: readonly ChannelResponse[]
  readonly counting: boolean
}

/** Values a machine gets where its maker gives none (judgement: ordinary builds; shown as assumed). */
export const MACHINE_DEFAULTS = {
  sourceToDetectorMm: 500,
  magnification: 1.2,
  filterAlMm: 1,
  windowBeMm: 1,
  anodeAngleDeg: 20,
  blurPixels: 0.3,
  beam: 'down',
  views: 1,
  tiltDeg: 20,
  beltMm: 0,
  beamWidthMm: 1.5,
  sensor: 'cdte',
  sensorMm: 2,
} as const

/** Fills a quoted machine; its detector becomes channels. Throws when it has neither layers nor windows. */
export function buildOf(machine: XrayMachine): XrayBuild {
  const d = MACHINE_DEFAULTS
  const counting = machine.windowsKeV !== undefined
  if (!counting && !machine.detectorLayers)
    throw new RangeError('an x-ray machine needs detectorLayers or windowsKeV')
  const channels = counting
    ? countingChannels(machine.windowsKeV!, machine.sensor ?? d.sensor, machine.sensorMm ?? d.sensorMm)
    : scintillatorChannels(machine.detectorLayers!)
  return {
    sourceToDetectorMm: machine.sourceToDetectorMm ?? d.sourceToDetectorMm,
    magnification: machine.magnification ?? d.magnification,
    pixelMm: machine.pixelMm,
    filterAlMm: machine.filterAlMm ?? d.filterAlMm,
    windowBeMm: machine.windowBeMm ?? d.windowBeMm,
    anodeAngleDeg: machine.anodeAngleDeg ?? d.anodeAngleDeg,
    blurPixels: machine.blurPixels ?? d.blurPixels,
    beam: machine.beam ?? d.beam,
    views: machine.views ?? d.views,
    tiltDeg: machine.tiltDeg ?? d.tiltDeg,
    beltMm: machine.beltMm ?? d.beltMm,
    beamWidthMm: machine.beamWidthMm ?? d.beamWidthMm,
    maxLinesPerSecond: machine.maxLinesPerSecond ?? null,
    channels,
    counting,
  }
}

/** Belt speed, mm/s. */
export function speedMmPerS(speedMPerMin: number): number {
  return (speedMPerMin * 1000) / 60
}

/** Lines per second at one line per object-plane pixel of travel. */
export function linesPerSecond(build: XrayBuild, speedMPerMin: number): number {
  return speedMmPerS(speedMPerMin) / (build.pixelMm / build.magnification)
}

/**
 * Pixel in the object plane, mm: pixel / magnification. Where the belt outruns the line rate, the pixel
 * stretches along travel and the geometric mean of both sides counts.
 */
export function objectPixelMm(build: XrayBuild, speedMPerMin: number): number {
  const across = build.pixelMm / build.magnification
  const limit = build.maxLinesPerSecond
  if (limit === null || linesPerSecond(build, speedMPerMin) <= limit) return across
  return Math.sqrt((across * speedMmPerS(speedMPerMin)) / limit)
}

const filtered = recent<Float64Array>(200)

/** Photons per mm² and mAs per bin at 1 m behind window, filter and the air up to the detector; read only. */
export function filteredSpectrum(build: XrayBuild, kV: number): Float64Array {
  const { anodeAngleDeg, filterAlMm, windowBeMm, sourceToDetectorMm } = build
  const key = `${kV}/${anodeAngleDeg}/${filterAlMm}/${windowBeMm}/${sourceToDetectorMm}`
  return filtered(key, () =>
    behindFilters(tubeSpectrum(kV, anodeAngleDeg), [
      ['aluminium', filterAlMm],
      ['beryllium', windowBeMm],
      ['air', sourceToDetectorMm],
    ]),
  )
}

/** Photons per pixel, line and bin that reach the detector with nothing on the belt, at a tube current in mA. */
export function openBeam(build: XrayBuild, kV: number, mA: number, speedMPerMin: number): Float64Array {
  const a = objectPixelMm(build, speedMPerMin)
  const lineS = a / speedMmPerS(speedMPerMin)
  const scale = (1000 / build.sourceToDetectorMm) ** 2 * build.pixelMm ** 2 * mA * lineS
  const spectrum = filteredSpectrum(build, kV)
  const result = new Float64Array(BIN_COUNT)
  for (let i = 0; i < BIN_COUNT; i++) result[i] = spectrum[i]! * scale
  return result
}
