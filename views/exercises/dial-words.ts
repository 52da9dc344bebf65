import type { DialInput } from '../../src/exercises/dial/dial.ts'
import type { MetalInput } from '../../src/exercises/dial/metal-dial.ts'
import { INPUT_WORDS, inputValueWords } from '../words/trade-offs.ts'

/** Everything the control may move. */
export type Moved = DialInput | MetalInput

/** What is moved, in words. */
export function movedWords(input: Moved): string {
  if (input === 'angle') return 'angle of a wire to the travel'
  if (input === 'place') return 'place in the opening, middle to upper wall'
  return INPUT_WORDS[input].name
}

/** A place of the control with its value. */
export function movedTo(input: Moved, unit: string, value: number): string {
  if (input === 'angle') return `Angle to the travel ${value}°`
  if (input === 'place')
    return value === 0
      ? 'In the middle of the opening'
      : `${value} % of the way from the middle to the upper wall`
  const words = INPUT_WORDS[input].name
  return `${words.charAt(0).toUpperCase()}${words.slice(1)} ${inputValueWords(input, unit, value)}`
}
