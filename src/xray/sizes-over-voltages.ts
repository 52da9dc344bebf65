import type { Contaminant, Point, XrayMachine } from '../contract/index.ts'
import { type Choice, chooseStep } from '../numerics/smooth-choice.ts'
import type { XraySetting } from './assessment.ts'
import type { XrayBuild } from './beam/exposure.ts'
import { settingAt, voltagesOf } from './beam/settings.ts'
import type { PackInBeam } from './detector/channels.ts'
import { PRACTICE, type PracticeConstants } from './observer/practice.ts'
import { LARGEST_MM, objectIn, type Scene, type SeenPiece, setScene } from './observer/scene.ts'
import { liftsByVoltage } from './observer/similar-scenes.ts'
import { pieceIn, sizeIn } from './picture.ts'
import { materialAttenuation } from './places/pack-in-beam.ts'

/** One setting of a machine with the sizes (mm) it is expected to find. */
export interface Step {
  readonly setting: XraySetting
  readonly scene: Scene
  readonly expectedMm: readonly (number | null)[]
}

/** All settings of a machine, the chosen one, and the contaminants as it sees them. */
export interface Voltages {
  readonly steps: readonly Step[]
  readonly choice: Choice
  readonly chosen: Step
  readonly pieces: readonly SeenPiece[]
  /** Thresholds at each step over those at the chosen one. */
  readonly lifts: readonly number[]
}

/**
 * Expected sizes at all voltages of a machine and the choice between them. Thresholds in grain are worked out at
 * the middle voltage and carried over to the others; those of the chosen one are then its own.
 */
export function overVoltages(
  machine: XrayMachine,
  build: XrayBuild,
  point: Point,
  pack: PackInBeam,
  contaminants: readonly Contaminant[],
  constants: PracticeConstants = PRACTICE,
): Voltages {
  const settings = voltagesOf(machine).map((kV) => settingAt(machine, build, kV, point.speedMPerMin))
  const scenes = settings.map((setting) => setScene(build, point, pack, setting, constants))
  const lifts = liftsByVoltage(
    scenes,
    settings.map(({ kV }) => kV),
  )
  const middle = scenes.length >> 1
  const mus = contaminants.map(({ material }) => materialAttenuation(material))
  const own = (scene: Scene) => contaminants.map((c) => pieceIn(scene, c))
  const lent = own(scenes[middle]!)
  let last: readonly (number | null)[] = []
  const steps = scenes.map((scene, s): Step => {
    const expectedMm = contaminants.map((c, i) => {
      const lift = lifts[s]!
      const piece =
        s === middle ? lent[i]! : objectIn(scene, c, mus[i]!, (mm) => lift * lent[i]!.threshold(mm))
      return sizeIn(scene, c, point, last[i], piece)
    })
    last = expectedMm
    return { setting: settings[s]!, scene, expectedMm }
  })
  const choice = chooseStep(
    steps.map(({ expectedMm }) => expectedMm),
    contaminants,
    LARGEST_MM,
  )
  const approximate = steps[choice.index]!
  const pieces = choice.index === middle ? lent : own(approximate.scene)
  const chosen: Step = {
    ...approximate,
    expectedMm: contaminants.map((c, i) =>
      sizeIn(approximate.scene, c, point, approximate.expectedMm[i], pieces[i]!),
    ),
  }
  return {
    steps: steps.map((step, s) => (s === choice.index ? chosen : step)),
    choice,
    chosen,
    pieces,
    lifts: lifts.map((lift) => lift / lifts[choice.index]!),
  }
}

/** The settings of a machine with their thresholds over those of the chosen one. */
export function settingsOf({ steps, lifts }: Voltages): { setting: XraySetting; lift: number }[] {
  return steps.map(({ setting }, s) => ({ setting, lift: lifts[s]! }))
}
