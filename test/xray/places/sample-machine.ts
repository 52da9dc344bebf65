import type { XrayMachine } from '../../../src/contract/index.ts'

/** An x-ray machine for standing packs at a fixed voltage. */
export const sampleMachine = (more: Partial<XrayMachine> = {}): XrayMachine => ({
  id: 'sample',
  family: 'xray',
  kV: 90,
  mA: 6,
  pixelMm: 0.8,
  sourceToDetectorMm: 700,
  beam: 'side',
  detectorLayers: [
    { scintillator: 'gos', mgPerCm2: 110, swank: 0.8, electronsPerKeV: 20, noiseElectrons: 1500 },
  ],
  ...more,
})
