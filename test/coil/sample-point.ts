import { readFileSync } from 'node:fs'
import type { Contaminant, Part, Point, Product } from '../../src/contract/index.ts'

/** A block of cheese on a belt through an opening of 175 × 350 mm; change what the test is about. */
export function samplePoint(
  changes: Partial<Omit<Point, 'product'>> = {},
  product: Partial<Product> = {},
): Point {
  return {
    name: 'after packing',
    stage: 'packed',
    heightMm: 40,
    filledMm: 40,
    widthMm: 100,
    lengthMm: 150,
    massG: null,
    outline: 'box',
    parts: [],
    inserts: [],
    speedMPerMin: 20,
    packsPerMin: 60,
    kgPerHour: null,
    lanes: 1,
    hoursPerDay: 16,
    falseRejectsPerPack: 0.001,
    checkIntervalMin: 60,
    reactMin: 10,
    apertureHeightMm: 175,
    apertureWidthMm: 350,
    largestHeightMm: null,
    largestWidthMm: null,
    fallHeightMm: null,
    pipeDiameterMm: null,
    line: '',
    afterStep: '',
    reject: null,
    productSignal: null,
    ...changes,
    product: {
      food: 'cheddar',
      composition: null,
      densityGPerCm3: 1.056,
      structure: 'solid',
      grainMm: 0,
      packing: 1,
      unevennessMm: 0.2,
      voidFree: false,
      stiff: false,
      boneIn: false,
      temperatureC: 5,
      saltPct: null,
      ironMgPerKg: 0,
      conductivitySPerM: null,
      ...product,
    },
  }
}

export function sampleContaminant(material: string, changes: Partial<Contaminant> = {}): Contaminant {
  return {
    material,
    shape: 'sphere',
    lengthMm: null,
    faceMm2: null,
    placement: 'inside',
    mustFindMm: null,
    basis: 'best-achievable',
    severity: 3,
    likelihood: 3,
    foundPerMillionPacks: null,
    entersAt: '',
    entries: [],
    ...changes,
  }
}

/** Packaging of a pouch: plain film left out, metallised faces, or a closed sleeve of foil. */
export function packagingPart(kind: 'none' | 'film' | 'foil'): Part[] {
  if (kind === 'none') return []
  return kind === 'film'
    ? [{ material: 'metallised_film', mm: 0.03, place: 'wrap' }]
    : [{ material: 'aluminium_foil', mm: 0.009, place: 'sleeve' }]
}

export const fixture = <T>(name: string): T =>
  JSON.parse(readFileSync(new URL(`./fixtures/${name}.json`, import.meta.url), 'utf8')) as T
