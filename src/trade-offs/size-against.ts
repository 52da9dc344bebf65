import { lineUp } from '../advice/assess/line-up.ts'
import type { Brief } from '../contract/index.ts'
import type { Input, InputId } from './input.ts'
import { knownInput } from './inputs.ts'
import type { Setup } from './setup.ts'
import { isSized, type SizedMachine, type Sizes, sizesAt } from './sizes-at.ts'
import { stepsBetween } from './steps.ts'

/** One point of a curve: the input's value, what it moves with it, and the sizes there. */
export interface SizeStep extends Sizes {
  readonly value: number
  readonly heightMm: number
  readonly speedMPerMin: number
}

/** Findable size of one contaminant against one input at one machine. */
export interface Series {
  readonly machine: string
  readonly label: string
  readonly input: InputId
  /** The input in the brief; null where it has no single value there. */
  readonly present: number | null
  /** Sizes in the brief as it stands. */
  readonly now: Sizes
  /** Ascending in value; empty where the input does not enter this machine's sizes. */
  readonly steps: readonly SizeStep[]
}

/** Detectors with a computed size that can stand at a point, as the advice lines them up. */
export function sizedMachinesAt(brief: Brief, pointIndex: number): SizedMachine[] {
  return lineUp(brief, brief.points[pointIndex]!)
    .map(({ machine }) => machine)
    .filter(isSized)
}

/** Every other step carries the cautious size, and so do both ends and the present value. */
const isKept = (index: number, count: number, atPresent: boolean): boolean =>
  index % 2 === 0 || index === count - 1 || atPresent

function seriesOf(
  brief: Brief,
  setup: Setup & { readonly machine: SizedMachine },
  contaminantIndex: number,
  input: Input,
  steps: number,
): Series {
  const { machine, point } = setup
  const { contaminants } = brief
  const now = sizesAt(setup, contaminants, contaminantIndex, true)
  const enters = input.families.includes(machine.family) && input.appliesAt(point)
  const present = enters ? input.present(setup, now) : null
  const values = !enters
    ? []
    : (input.values?.(setup) ?? stepsBetween(input.range(setup, now), input.scale, steps, present))
  return {
    machine: machine.id,
    label: machine.label ?? machine.id,
    input: input.id,
    present,
    now,
    steps: values.map((value, index): SizeStep => {
      const changed = input.at(setup, value, now)
      const { heightMm, speedMPerMin } = changed.point
      const withCautious = isKept(index, values.length, value === present)
      const sizes = isSized(changed.machine)
        ? sizesAt({ ...changed, machine: changed.machine }, contaminants, contaminantIndex, withCautious)
        : now
      return { value, heightMm, speedMPerMin, ...sizes }
    }),
  }
}

/**
 * Findable size of one contaminant against ONE input for chosen machines at one inspection point, everything
 * else as in the brief. Pure; the present value is among the steps, so that there each curve has the advice's
 * number. Machines chosen that do not stand at the point are left out.
 *
 * machineIds: ids of the line-up; input: see trade-offs/inputs.ts; steps: how many values, at least 2. x-ray
 * curves carry the cautious size at every other step, metal detectors at all.
 */
export function sizeAgainst(
  brief: Brief,
  pointIndex: number,
  machineIds: readonly string[],
  contaminantIndex: number,
  input: InputId,
  steps: number,
): Series[] {
  const point = brief.points[pointIndex]
  if (!point) throw new RangeError(`no inspection point ${pointIndex}; the brief has ${brief.points.length}`)
  if (!brief.contaminants[contaminantIndex])
    throw new RangeError(`no contaminant ${contaminantIndex}; the brief has ${brief.contaminants.length}`)
  const machines = sizedMachinesAt(brief, pointIndex).filter(({ id }) => machineIds.includes(id))
  return machines.map((machine) =>
    seriesOf(brief, { point, machine }, contaminantIndex, knownInput(input), Math.max(2, steps)),
  )
}
