import type { CloseCall } from '../../contract/index.ts'
import type { Close, LineOutcome } from '../stages.ts'
import { joined, saidOf } from './said.ts'

/** A close call in the words of the rules that fired on the ground "close" of its point, with the test that would settle it. */
export function closeCallWords(
  { first, second, contaminants }: Close,
  said: readonly LineOutcome[],
): CloseCall {
  const of = (type: LineOutcome['type']) => said.filter((one) => one.type === type)
  return {
    first: first.equipment,
    second: second.equipment,
    contaminants: [...contaminants],
    because: joined(of('hinges')),
    test: joined(of('tests')),
    grounds: said.map(saidOf),
  }
}
