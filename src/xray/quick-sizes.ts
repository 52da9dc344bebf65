import type { Contaminant, Point, XrayMachine } from '../contract/index.ts'
import type { Refusal, XraySetting } from './assessment.ts'
import { buildOf } from './beam/exposure.ts'
import { bestAt, decideIn, lookAt, promisedAt } from './look.ts'
import { looksLikeVoid } from './observer/scene.ts'
import { materialAttenuation, packInBeam } from './places/pack-in-beam.ts'
import { settlingOf } from './places/settling.ts'
import { refusalsOf } from './refusals.ts'
import { overVoltages, settingsOf } from './sizes-over-voltages.ts'

/** Sizes of one contaminant at one machine, as the whole assessment gives them but without its trail. Sizes in mm. */
export interface QuickSizes {
  readonly refusals: readonly Refusal[]
  readonly setting: XraySetting
  readonly bestMm: number | null
  readonly expectedMm: number | null
  /** Null also where it was not asked for. */
  readonly cautiousMm: number | null
  /** Looks like a void in this food. */
  readonly looksLikeVoid: boolean
}

/**
 * The sizes of one contaminant, the tube voltage chosen for all contaminants of the brief as the assessment
 * chooses it. Made for curves: leaves out zones, other contaminants' best sizes, and, unless asked for, the
 * cautious size, which takes most of the time.
 */
export function quickSizes(
  machine: XrayMachine,
  point: Point,
  contaminants: readonly Contaminant[],
  wanted: number,
  withCautious: boolean,
): QuickSizes {
  const build = buildOf(machine)
  const pack = packInBeam(point, build)
  const contaminant = contaminants[wanted]!
  const voltages = overVoltages(machine, build, point, pack, contaminants)
  const { chosen } = voltages
  const settling = settlingOf(point, contaminant)
  const look = lookAt(build, point, pack, voltages)
  const deciding = decideIn(look, contaminant, settling, chosen.expectedMm[wanted]!)
  const { picture, expectedMm } = deciding.decides
  const settings = settingsOf(voltages)
  const mu = materialAttenuation(contaminant.material)
  return {
    refusals: refusalsOf(machine, build, point),
    setting: chosen.setting,
    bestMm: picture && bestAt(look, deciding, deciding.decides, contaminant, point, settings),
    expectedMm,
    cautiousMm: withCautious ? promisedAt(deciding.decides, contaminant).cautiousMm : null,
    looksLikeVoid: picture !== null && looksLikeVoid(picture.scene, mu, contaminant.placement),
  }
}

/** The setting of a machine and the sizes expected of it, one a contaminant: what a drawn pack is set up by. Sizes in mm. */
export interface ExpectedSizes {
  readonly refusals: readonly Refusal[]
  readonly setting: XraySetting
  readonly expectedMm: readonly (number | null)[]
}

/** Setting and expected sizes of all contaminants as the whole assessment gives them, and nothing else of it. */
export function expectedSizes({
  machine,
  point,
  contaminants,
}: {
  readonly machine: XrayMachine
  readonly point: Point
  readonly contaminants: readonly Contaminant[]
}): ExpectedSizes {
  const build = buildOf(machine)
  const pack = packInBeam(point, build)
  const voltages = overVoltages(machine, build, point, pack, contaminants)
  const look = lookAt(build, point, pack, voltages)
  return {
    refusals: refusalsOf(machine, build, point),
    setting: voltages.chosen.setting,
    expectedMm: contaminants.map((contaminant, c) => {
      const near = voltages.chosen.expectedMm[c]!
      return decideIn(look, contaminant, settlingOf(point, contaminant), near).decides.expectedMm
    }),
  }
}
