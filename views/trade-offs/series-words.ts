import type { Series } from '../../src/trade-offs/size-against.ts'
import { sizeWords } from '../words/size.ts'
import { inputValueWords } from '../words/trade-offs.ts'

/** A series in words: from its first size to its last, and where the brief stands. */
export function endsWords({ label, input, steps, present, now }: Series, unit: string): string {
  const sized = steps.filter(({ expectedMm }) => expectedMm !== null)
  const first = sized.at(0)
  const last = sized.at(-1)
  if (!first || !last) return `${label}, no size to expect anywhere.`
  const at = (value: number) => inputValueWords(input, unit, value)
  const here =
    present === null || now.expectedMm === null
      ? ''
      : `; ${sizeWords(now.expectedMm)} mm at ${at(present)}, as in the brief`
  return `${label}, expected ${sizeWords(first.expectedMm)} mm at ${at(first.value)} to ${sizeWords(last.expectedMm)} mm at ${at(last.value)}${here}.`
}
