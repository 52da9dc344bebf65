import type { Input, InputId } from './input.ts'
import { depthWithSpeed, falseRejects, height, speed } from './inputs-belt.ts'
import { conductivity, frequency, opening, temperature } from './inputs-coil.ts'
import { grain, packing, unevenness } from './inputs-food.ts'
import { kV, pixel } from './inputs-xray.ts'

/** Every input a curve can run over, in the order a page lists them. */
export const INPUTS: readonly Input[] = [
  height,
  depthWithSpeed,
  speed,
  grain,
  packing,
  unevenness,
  kV,
  pixel,
  falseRejects,
  frequency,
  opening,
  conductivity,
  temperature,
]

const byId: ReadonlyMap<string, Input> = new Map(INPUTS.map((input) => [input.id, input]))

/** The input of an id; undefined for a word that is none. */
export const inputOf = (id: string): Input | undefined => byId.get(id)

/** The same for an id known to be one. */
export const knownInput = (id: InputId): Input => byId.get(id)!
