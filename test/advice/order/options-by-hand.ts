import type { Finding, Option } from '../../../src/contract/index.ts'

/** A point at which nothing of the pack itself decides. */
export const bag = {
  stage: 'packed',
  heightMm: 50,
  widthMm: 180,
  lengthMm: 250,
  speedMPerMin: 30,
  parts: [{ material: 'pe', mm: 0.06, place: 'wrap' }],
}

/** A finding with chosen sizes, mm; meets follows from them unless given. */
export function finding(contaminant: number, over: Partial<Finding> = {}): Finding {
  const base: Finding = {
    contaminant,
    material: 'quartz',
    shape: 'sphere',
    placement: 'inside',
    lengthMm: null,
    faceMm2: null,
    bestMm: 1,
    bestRangeMm: null,
    extrapolated: null,
    halfMm: 1.5,
    expectedMm: 2,
    sureMm: 2.5,
    cautiousMm: 2.8,
    chanceAtMustFind: 0.95,
    chanceAnyOrientation: null,
    meets: 'yes',
    mustFindMm: 3,
    demonstrated: null,
    measured: false,
    curve: { sizesMm: [], chance: [] },
    zones: [],
    widest: '',
    note: '',
    calculation: '',
    ...over,
  }
  if (over.meets) return base
  const { expectedMm, cautiousMm, mustFindMm } = base
  if (mustFindMm === null) return { ...base, meets: 'open' }
  if (expectedMm === null || expectedMm > mustFindMm) return { ...base, meets: 'no' }
  return { ...base, meets: cautiousMm === null || cautiousMm > mustFindMm ? 'maybe' : 'yes' }
}

/** An option with chosen findings. */
export function option(
  equipment: string,
  rank: number | null,
  findings: Finding[],
  over: Partial<Option> = {},
): Option {
  return {
    equipment,
    label: `machine ${equipment}`,
    family: 'xray',
    rank,
    burden: 3,
    verdict: 'worth-a-test',
    build: null,
    askFor: null,
    beam: null,
    because: '',
    grounds: [],
    settings: { kV: 60, mA: 5, frequenciesKHz: [] },
    findings,
    reasons: [],
    whyNot: [],
    cautions: [],
    ...over,
  }
}
