import type { Contrast, Option } from '../../contract/index.ts'
import type { Apart, LineOutcome } from '../stages.ts'
import { traceKey } from './reason.ts'
import { joined, saidOf } from './said.ts'

/** What two options of a point differ in, with what puts one before the other (`said`) and what the rules say. */
export function contrastWords(
  pointIndex: number,
  apart: Apart,
  options: readonly [Option, Option],
  said: readonly LineOutcome[],
): Contrast {
  const textOf = ({ equipment, reasons }: Option, rule: string, contaminant: number | null) => {
    const key = traceKey({ pointIndex, equipment, contaminant, rule })
    return reasons.find(({ trace }) => trace === key)?.text
  }
  const { parting: _parting, ...same } = apart
  return {
    ...same,
    because: joined(said),
    grounds: said.map(saidOf),
    rules: apart.rules.map((one) => ({
      ...one,
      text:
        textOf(options[0], one.rule, one.contaminant) ?? textOf(options[1], one.rule, one.contaminant) ?? '',
    })),
  }
}
