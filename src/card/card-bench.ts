import { asItRejects } from '../advice/assess/clean-run.ts'
import { lineUp } from '../advice/assess/line-up.ts'
import { remembered } from '../advice/assess/remembered.ts'
import type { Brief, Point, XrayMachine } from '../contract/index.ts'
import type { Refusal } from '../xray/assessment.ts'
import { buildOf } from '../xray/beam/exposure.ts'
import { settingAt } from '../xray/beam/settings.ts'
import { type ExposedPack, exposePack } from '../xray/image/pack/exposed-pack.ts'
import { expectedSizes } from '../xray/quick-sizes.ts'

/** What was asked for cannot be: the message says what was given and what is allowed. */
export class CardError extends Error {}

/** An x-ray machine set up before a point, with the sizes expected of it. */
export interface Bench {
  readonly machine: XrayMachine
  readonly exposed: ExposedPack
  readonly expectedMm: readonly (number | null)[]
  readonly leftOut: string
}

/** X-ray machines of a point, all or those named in their order. Throws CardError where there are none. */
export function xrayMachines(brief: Brief, point: Point, ids: readonly string[] | undefined): XrayMachine[] {
  const all = lineUp(brief, point).flatMap(({ machine }) => (machine.family === 'xray' ? [machine] : []))
  const known = all.map((machine) => machine.id)
  for (const id of ids ?? []) {
    if (!known.includes(id))
      throw new CardError(
        `${JSON.stringify(id)} is no x-ray machine of this point; it has ${known.join(', ') || 'none'}`,
      )
  }
  if (all.length === 0)
    throw new CardError(`no x-ray machine of this brief stands at "${point.name}"; a card needs one`)
  return ids ? [...new Set(ids)].map((id) => all.find((machine) => machine.id === id)!) : all
}

/** Setups kept: the next card of a point asks for the same sizes. */
const KEPT = 64
const sizesOf = remembered(expectedSizes, KEPT)

/** A machine set up before the point: its setting as the advice chooses it, or at the voltage asked for. */
export function benchOf(brief: Brief, index: number, machine: XrayMachine, askedKV?: number): Bench {
  const point = brief.points[index]!
  const sizes = sizesOf({
    machine,
    point: asItRejects(brief, index, machine.id, 'all'),
    contaminants: brief.contaminants,
  })
  const build = buildOf(machine)
  const setting =
    askedKV === undefined ? sizes.setting : settingAt(machine, build, askedKV, point.speedMPerMin)
  const exposed = exposePack(machine, build, point, setting)
  const dark = exposed.channels.count === 0 ? 'no radiation gets through this pack' : ''
  return {
    machine,
    exposed,
    expectedMm: sizes.expectedMm,
    leftOut: sizes.refusals.map(refusalWords).join('; ') || dark,
  }
}

function refusalWords({ id, given, allowed, unit }: Refusal): string {
  const what =
    id === 'too-wide'
      ? 'the pack is too wide'
      : id === 'too-high'
        ? 'the pack is too high'
        : 'the beam does not reach the edges'
  return `${what}: ${Math.round(given)} ${unit}, at most ${Math.round(allowed)} ${unit}`
}
