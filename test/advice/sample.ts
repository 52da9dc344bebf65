import { mergeBrief } from '../../src/advice/book/rule-examples.ts'
import { parseBrief } from '../../src/brief/parse.ts'
import type { CoilAssessment, CoilFinding } from '../../src/coil/assessment.ts'
import type { Brief, CoilMachine, XrayMachine } from '../../src/contract/index.ts'
import type { XrayAssessment, XrayFinding } from '../../src/xray/assessment.ts'

const BASE = {
  title: 'Almonds in a bag',
  market: 'UK',
  product: { food: 'almond' },
  points: [
    {
      name: 'after packing',
      stage: 'packed',
      heightMm: 60,
      widthMm: 200,
      lengthMm: 250,
      massG: 1000,
      parts: [{ material: 'pe', mm: 0.08, place: 'wrap' }],
      speedMPerMin: 30,
      packsPerMin: 60,
      lanes: 1,
      falseRejectsPerPack: 0.001,
    },
  ],
  contaminants: [{ material: 'quartz', mustFindMm: 3 }],
}

/** A parsed brief: almonds in a bag with the differences asked for. */
export function sampleBrief(over: Record<string, unknown> = {}): Brief {
  const parsed = parseBrief(mergeBrief(BASE, over))
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  return parsed.brief
}

export const SAMPLE_MACHINE: XrayMachine = {
  id: 'sample-machine',
  label: 'sample machine',
  family: 'xray',
  kVRange: [40, 80],
  maxPowerW: 600,
  pixelMm: 0.8,
  sourceToDetectorMm: 480,
  magnification: 1.2,
  maxWidthMm: 400,
  maxHeightMm: 150,
}

const FINDING: XrayFinding = {
  contaminant: 0,
  bestMm: 2,
  bestRangeMm: [1.8, 2.2],
  extrapolated: { by: [], factor: 1 },
  halfMm: 2.2,
  expectedMm: 2.5,
  sureMm: 3.1,
  cautiousMm: 4,
  chanceAtMustFind: 0.97,
  chanceAnyOrientation: null,
  curve: { sizesMm: [], chance: [] },
  looksLikeVoid: false,
  contrast: 5.5,
  limitMm: 25,
  noise: { photon: 0.2, electronics: 0.01, grain: 0.7, unevenness: 0.07, packaging: 0.02 },
  widest: 'grain pattern',
  place: '',
  settling: 'stays',
  zones: [],
  calculation: 'p0.sample.c0.expected',
}

/** A hand-written assessment, so that facts are tested against figures that were chosen, not computed. */
export function sampleAssessment(
  over: Partial<XrayAssessment> = {},
  finding: Partial<XrayFinding> = {},
): XrayAssessment {
  const calculation = (id: string) => ({
    id,
    label: id,
    symbol: '',
    value: null,
    unit: '',
    formula: '',
    inputs: [],
    sources: [],
  })
  return {
    refusals: [],
    setting: { kV: 60, mA: 10, currentLimit: 'power' },
    kvSteps: [],
    runnerUp: null,
    channels: 1,
    ideal: false,
    pathMm: 60,
    solidPathMm: 33,
    transmission: { first: 0.2, last: 0.3 },
    packagingTransmission: 0.998,
    meanEnergyKeV: [42],
    openBeamHvlMmAl: 1.5,
    objectPixelMm: 0.667,
    linesPerSecond: 750,
    positions: 28_000,
    thresholdZ: 5.4,
    threshold: 5.4,
    findings: [{ ...FINDING, ...finding }],
    calculations: ['kV', 'mA', 'object-pixel', 'c0.expected', 'c0.best', 'c0.cautious', 'c0.contrast'].map(
      (name) => calculation(`p0.sample.${name}`),
    ),
    ...over,
  }
}

export const COIL_MACHINE: CoilMachine = {
  id: 'sample-coil',
  label: 'sample coil',
  family: 'coil',
  frequenciesKHz: [50, 300],
  use: 'together',
}

/** A hand-written finding of a coil, so that facts are tested against figures that were chosen. */
export const coilFinding = (over: Partial<CoilFinding> = {}): CoilFinding => ({
  contaminant: 0,
  answers: true,
  bestMm: 1,
  bestRangeMm: [0.9, 1.1],
  halfMm: 1.8,
  expectedMm: 2,
  sureMm: 2.4,
  cautiousMm: 3,
  chanceAtMustFind: 0.99,
  chanceAnyOrientation: null,
  curve: { sizesMm: [], chance: [] },
  limitMm: 12,
  weakOrientation: null,
  orientations: [],
  missedAgain: [],
  frequencyUnsuitable: false,
  floorMm: 0.8,
  widest: 'product conductivity',
  zones: [],
  calculation: 'p0.coil.contaminant.0.expected',
  ...over,
})

export function coilAssessment(over: Partial<CoilAssessment> = {}): CoilAssessment {
  const background = (frequencyKHz: number, ball: number, layers: number) => ({
    frequencyKHz,
    productM3: 1e-9,
    productPhaseDeg: -90,
    productOverSteelBall: ball,
    layersM3: 1e-9,
    layersOverSteelBall: layers,
    insideShare: 0.8,
  })
  return {
    family: 'coil',
    arrangement: 'tunnel',
    refusals: [],
    opening: { heightMm: 100, widthMm: 250, origin: 'pack' },
    fitting: null,
    frequenciesKHz: [50, 300],
    frequencySteps: [],
    frequencyRunnerUp: null,
    residual: null,
    conductivity: {
      valueSPerM: 0.2,
      lowSPerM: 0.1,
      highSPerM: 0.4,
      state: 'thawed',
      at25SPerM: 0.2,
      temperatureFactor: 1,
      packingFactor: 1,
      mark: 'A',
      sources: [],
      formula: '',
    },
    productSignal: true,
    susceptibility: 0,
    background: [background(50, 2, 5), background(300, 12, 40)],
    layers: [],
    filling: { heightShare: 0.6, areaShare: 0.48, basis: 'pack', speedMPerS: 0.5 },
    metalFreeZone: { fixedMm: 150, movingMm: 200 },
    packGap: { neededMm: 120, givenMm: 250 },
    thresholdZ: 3.9,
    spread: 0.15,
    findings: [coilFinding()],
    streamShare: 0,
    calculations: ['opening.height', 'opening.width', 'contaminant.0.expected'].map((name) => ({
      id: `p0.coil.${name}`,
      label: name,
      symbol: '',
      value: null,
      unit: '',
      formula: '',
      inputs: [],
      sources: [],
    })),
    ...over,
  }
}
