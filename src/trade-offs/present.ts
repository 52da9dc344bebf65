import { assessDetector } from '../advice/assess/assess-machine.ts'
import { lineUp } from '../advice/assess/line-up.ts'
import type { Brief, Finding } from '../contract/index.ts'
import type { XrayAssessment } from '../xray/assessment.ts'

/** Shares of the noise an x-ray machine decides against; they add up to 1. */
export interface NoiseShares {
  readonly photon: number
  readonly grain: number
  readonly unevenness: number
  readonly electronics: number
  readonly packaging: number
}

/** How an x-ray machine's tube was set, and what each voltage would have given for every contaminant. */
export interface TubeChoice {
  readonly kV: number
  readonly mA: number
  readonly currentLimit: string
  /** The next best voltage outside those that count as equal, and by which share it does worse; null for none. */
  readonly runnerUp: { readonly kV: number; readonly worseBy: number } | null
  readonly steps: readonly {
    readonly kV: number
    readonly mA: number
    readonly expectedMm: readonly (number | null)[]
  }[]
}

/** One machine in the brief as it stands. */
export interface Present {
  readonly machine: string
  readonly label: string
  readonly finding: Finding
  /** x-ray only, and only where the object can be told from food at all. */
  readonly noise: NoiseShares | null
  readonly tube: TubeChoice | null
}

function tubeOf({ setting, kvSteps, runnerUp }: XrayAssessment): TubeChoice {
  const own = kvSteps.find(({ kV }) => kV === setting.kV)?.norm
  const next = runnerUp === null ? undefined : kvSteps[runnerUp]
  return {
    ...setting,
    runnerUp: own && next?.norm ? { kV: next.kV, worseBy: next.norm / own - 1 } : null,
    steps: kvSteps.map(({ kV, mA, expectedMm }) => ({ kV, mA, expectedMm })),
  }
}

/** Chance curve, noise and tube setting of chosen machines for one contaminant, exactly as the advice has them. */
export function presentOf(
  brief: Brief,
  pointIndex: number,
  machineIds: readonly string[],
  contaminantIndex: number,
): Present[] {
  return lineUp(brief, brief.points[pointIndex]!).flatMap((linedUp): Present[] => {
    const { machine } = linedUp
    const done = machineIds.includes(machine.id) ? assessDetector(brief, pointIndex, linedUp) : null
    const finding = done?.findings.find(({ contaminant }) => contaminant === contaminantIndex)
    if (!done || !finding) return []
    const { assessed } = done
    const xray = assessed.family === 'xray' ? assessed.assessment : null
    const own = xray?.findings[contaminantIndex]
    return [
      {
        machine: machine.id,
        label: machine.label ?? machine.id,
        finding,
        noise: own && own.curve.sizesMm.length > 0 ? own.noise : null,
        tube: xray && tubeOf(xray),
      },
    ]
  })
}
