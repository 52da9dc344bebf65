import { assessCoil } from '../coil/assess-coil.ts'
import type { CoilMachine, Contaminant, Machine, XrayMachine } from '../contract/index.ts'
import { quickSizes } from '../xray/quick-sizes.ts'
import type { Setup } from './setup.ts'

/** Why there is no size: what refuses the pack, or what the size would be. */
export const GAPS = [
  'too-wide',
  'too-high',
  'fan-too-wide',
  'over-full',
  'looks-like-void',
  'not-a-metal',
  'above-limit',
] as const
export type Gap = (typeof GAPS)[number]

/** Findable sizes of one contaminant in one setup, mm; null with the reason in `gap`, never zero. */
export interface Sizes {
  readonly bestMm: number | null
  readonly expectedMm: number | null
  readonly cautiousMm: number | null
  /** False where the cautious size was left out to save time. */
  readonly cautiousKnown: boolean
  readonly gap: Gap | null
  readonly kV: number | null
  readonly mA: number | null
  readonly frequenciesKHz: readonly number[]
  /** Metal detectors: the opening in use and the food's conductivity. */
  readonly openingMm: { readonly heightMm: number; readonly widthMm: number } | null
  readonly conductivitySPerM: number | null
}

/** Machines that find pieces at a size that can be computed. */
export type SizedMachine = XrayMachine | CoilMachine
export const isSized = (machine: Machine): machine is SizedMachine =>
  machine.family === 'xray' || machine.family === 'coil'

const NO_SIZES = { bestMm: null, expectedMm: null, cautiousMm: null } as const

function xraySizes(
  machine: XrayMachine,
  { point }: Setup,
  contaminants: readonly Contaminant[],
  wanted: number,
  withCautious: boolean,
): Sizes {
  const quick = quickSizes(machine, point, contaminants, wanted, withCautious)
  const { setting, bestMm, expectedMm, cautiousMm } = quick
  const refused = quick.refusals[0]?.id ?? null
  const unseen = quick.looksLikeVoid ? 'looks-like-void' : 'above-limit'
  return {
    ...(refused ? NO_SIZES : { bestMm, expectedMm, cautiousMm }),
    cautiousKnown: withCautious,
    gap: refused ?? (expectedMm === null ? unseen : null),
    kV: setting.kV,
    mA: setting.mA,
    frequenciesKHz: [],
    openingMm: null,
    conductivitySPerM: null,
  }
}

function coilSizes(
  machine: CoilMachine,
  { point }: Setup,
  contaminants: readonly Contaminant[],
  wanted: number,
): Sizes {
  const assessment = assessCoil({
    machine,
    point,
    contaminants,
    ...(machine.mostAtOnce ? { mostAtOnce: machine.mostAtOnce } : {}),
  })
  const { answers, bestMm, expectedMm, cautiousMm } = assessment.findings[wanted]!
  const refused = assessment.refusals[0]?.id ?? null
  return {
    ...(refused ? NO_SIZES : { bestMm, expectedMm, cautiousMm }),
    cautiousKnown: true,
    gap: refused ?? (answers ? (expectedMm === null ? 'above-limit' : null) : 'not-a-metal'),
    kV: null,
    mA: null,
    frequenciesKHz: assessment.frequenciesKHz,
    openingMm: assessment.opening,
    conductivitySPerM: assessment.conductivity.valueSPerM,
  }
}

/** Sizes of one contaminant; settings are chosen for all of them, as in the advice. */
export function sizesAt(
  setup: Setup & { readonly machine: SizedMachine },
  contaminants: readonly Contaminant[],
  wanted: number,
  withCautious: boolean,
): Sizes {
  const { machine } = setup
  return machine.family === 'xray'
    ? xraySizes(machine, setup, contaminants, wanted, withCautious)
    : coilSizes(machine, setup, contaminants, wanted)
}
