import { z } from 'zod'
import { oneOf, quantity, text } from './quantity.ts'
import { quoted } from './quoted.ts'

const common = {
  id: text('machine id', 60).min(1, { error: 'a machine needs an id' }),
  label: text('machine label').optional(),
  burden: quantity('burden', '', 1, 5).optional(),
  maxWidthMm: quantity('widest pack', 'mm', 10, 5000).optional(),
  maxHeightMm: quantity('highest pack', 'mm', 5, 3000).optional(),
}

export const BUILDS = ['pack', 'wide', 'case', 'bulk', 'pipe'] as const

/** One scintillator layer of an energy-integrating detector, in the order the beam meets them. */
export const detectorLayerSchema = z.strictObject({
  copperBeforeMm: quantity('copper before the layer', 'mm', 0, 5).optional(),
  scintillator: oneOf('scintillator', ['gos', 'csi']),
  mgPerCm2: quantity('scintillator coverage', 'mg/cm²', 5, 2000),
  swank: quantity('Swank factor', '', 0.3, 1),
  electronsPerKeV: quantity('electrons per keV absorbed', '', 0.1, 1000),
  noiseElectrons: quantity('read noise', 'electrons', 0, 100000),
})

export const xrayMachineSchema = z.strictObject({
  ...common,
  family: z.literal('xray'),
  kV: quantity('tube voltage', 'kV', 20, 150).optional(),
  kVRange: z
    .tuple([quantity('lowest tube voltage', 'kV', 20, 150), quantity('highest tube voltage', 'kV', 20, 150)])
    .optional(),
  mA: quantity('tube current', 'mA', 0.01, 100).optional(),
  maxPowerW: quantity('tube power', 'W', 1, 10000).optional(),
  maxMA: quantity('highest tube current', 'mA', 0.01, 100).optional(),
  pixelMm: quantity('pixel size', 'mm', 0.02, 5),
  sourceToDetectorMm: quantity('source to detector distance', 'mm', 100, 5000).optional(),
  magnification: quantity('magnification', '', 1, 5).optional(),
  filterAlMm: quantity('aluminium filter', 'mm', 0, 50).optional(),
  windowBeMm: quantity('beryllium window', 'mm', 0, 10).optional(),
  anodeAngleDeg: quantity('anode angle', 'degrees', 5, 45).optional(),
  blurPixels: quantity('blur', 'pixels', 0, 5).optional(),
  beam: oneOf('beam', ['down', 'side']).optional(),
  /** Which usual size of its technology it is. */
  build: oneOf('build', BUILDS).optional(),
  /** Angle of a second beam to the first. */
  tiltDeg: quantity('tilt of the second beam', 'degrees', 5, 60).optional(),
  views: quantity('number of views', '', 1, 2)
    .int({ error: 'the number of views must be 1 or 2' })
    .optional(),
  beltMm: quantity('belt thickness', 'mm', 0, 50).optional(),
  beamWidthMm: quantity('beam width at the belt', 'mm', 0.1, 50).optional(),
  maxLinesPerSecond: quantity('line rate', 'lines/s', 10, 100000).optional(),
  fullWellElectrons: quantity('full well', 'electrons', 1000, 1e12).optional(),
  detectorLayers: z.array(detectorLayerSchema).min(1).max(4).optional(),
  windowsKeV: z
    .array(z.tuple([quantity('window start', 'keV', 1, 200), quantity('window end', 'keV', 1, 200)]))
    .min(1)
    .max(16)
    .optional(),
  sensor: oneOf('sensor', ['cdte']).optional(),
  sensorMm: quantity('sensor thickness', 'mm', 0.05, 20).optional(),
  maxCountsPerMm2S: quantity('count rate ceiling', 'counts/mm²/s', 1000, 1e12).optional(),
})

export const coilMachineSchema = z.strictObject({
  ...common,
  family: z.literal('coil'),
  frequenciesKHz: z
    .array(quantity('frequency', 'kHz', 1, 3000))
    .min(1)
    .max(8),
  use: oneOf('use of the frequencies', ['together', 'choose']).optional(),
  /** Most frequencies that run at once where the machine chooses; all of them unless given. */
  mostAtOnce: quantity('frequencies at once', '', 1, 8)
    .int({ error: 'frequencies at once is a whole number from 1 to 8' })
    .optional(),
  apertureHeightMm: quantity('opening height', 'mm', 20, 2000).optional(),
  apertureWidthMm: quantity('opening width', 'mm', 20, 4000).optional(),
  arrangement: oneOf('arrangement', ['tunnel', 'free-fall', 'pipe']).optional(),
})

export const staticFieldMachineSchema = z.strictObject({
  ...common,
  family: z.literal('static-field'),
  apertureHeightMm: quantity('opening height', 'mm', 20, 2000).optional(),
  apertureWidthMm: quantity('opening width', 'mm', 20, 4000).optional(),
})

export const opticalMachineSchema = z.strictObject({
  ...common,
  family: z.literal('optical'),
  pixelMm: quantity('pixel size', 'mm', 0.02, 5).optional(),
  lanesWidthMm: quantity('width of the layer', 'mm', 50, 5000).optional(),
})

export const magnetMachineSchema = z.strictObject({
  ...common,
  family: z.literal('magnet'),
  surfaceTesla: quantity('flux density at the surface', 'T', 0.01, 3).optional(),
  reachMm: quantity('reach', 'mm', 1, 500).optional(),
})

export const sieveMachineSchema = z.strictObject({
  ...common,
  family: z.literal('sieve'),
  meshMm: quantity('mesh', 'mm', 0.02, 200).optional(),
})

export const densityMachineSchema = z.strictObject({
  ...common,
  family: z.literal('density'),
  velocityRatio: quantity('settling velocity ratio', '', 1, 10).optional(),
})

/** A machine as a supplier quotes it, or an archetype of the reference room. */
export const machineSchema = z.discriminatedUnion(
  'family',
  [
    xrayMachineSchema,
    coilMachineSchema,
    staticFieldMachineSchema,
    opticalMachineSchema,
    magnetMachineSchema,
    sieveMachineSchema,
    densityMachineSchema,
  ],
  {
    error: (issue) =>
      `family must be one of xray, coil, static-field, optical, magnet, sieve, density; ${quoted((issue.input as { family?: unknown } | null | undefined)?.family)} was given`,
  },
)

export type Machine = z.infer<typeof machineSchema>
export type XrayMachine = z.infer<typeof xrayMachineSchema>
export type CoilMachine = z.infer<typeof coilMachineSchema>
export type DetectorLayer = z.infer<typeof detectorLayerSchema>
export type Family = Machine['family']
/** Families that find pieces and so have a findable size; the rest remove a share of them upstream. */
export const DETECTOR_FAMILIES: readonly Family[] = ['xray', 'coil', 'static-field']
