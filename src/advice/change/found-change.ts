import type { Advice, Brief, FactValues, Option } from '../../contract/index.ts'
import { isPromised, meetsAll } from '../assess/meets.ts'
import { joined, saidOf } from '../say/said.ts'
import { nameWords, wordList } from '../say/words.ts'
import type { AskFound } from '../stages.ts'
import type { Found } from './change-search.ts'
import type { Move } from './lever.ts'

/** A change that holds, with the facts the rules word it by. */
export interface FoundChange {
  readonly inputs: readonly Move[]
  readonly point: number
  readonly option: Pick<Option, 'equipment'>
  /** null where it is not for one contaminant. */
  readonly contaminant: number | null
  /** What tells it from other changes of the same machine: a path of the brief. */
  readonly beside: string
  readonly values: FactValues
}

/** A lever pulled, or a larger size to find, with the option after it. */
export function changeOf(
  brief: Brief,
  { pair, lever }: Found,
  moves: readonly Move[],
  option: Option,
): FoundChange {
  const besides = option.findings.flatMap(({ contaminant, meets }, i) =>
    contaminant !== pair.contaminant && isPromised(meets) && !isPromised(pair.option.findings[i]!.meets)
      ? [contaminant]
      : [],
  )
  return {
    inputs: moves,
    point: pair.point,
    option,
    contaminant: pair.contaminant,
    beside: moves[0]!.path,
    values: {
      'change.kind': lever === null ? 'size' : 'lever',
      'change.machine': option.label,
      'change.met': wordList([pair.contaminant, ...besides].map((one) => nameWords(brief, one))),
      'change.meetsAll': meetsAll(option.findings),
      ...(lever === null ? {} : { 'change.lever': lever }),
    },
  }
}

/** A change in the words of the rules. */
export async function changeWords(
  { inputs, point, option: { equipment }, contaminant, beside, values }: FoundChange,
  ask: AskFound,
): Promise<Advice['changes'][number]> {
  const said = await ask({ ground: 'change', pointIndex: point, equipment, contaminant, beside }, values)
  return { inputs: [...inputs], equipment, effect: joined(said), grounds: said.map(saidOf), verified: true }
}

/** That nothing was found, in the words of the rules. */
export async function noChangeWords(
  missed: number,
  ranOut: boolean,
  ask: AskFound,
): Promise<Pick<Advice, 'changesNote' | 'changesGrounds'>> {
  const nowhere = { pointIndex: null, equipment: null, contaminant: null }
  const said = await ask(
    { ground: 'change', ...nowhere, beside: 'none' },
    {
      'change.kind': 'none',
      'change.missed': missed,
      'change.ranOut': ranOut,
    },
  )
  return { changesNote: joined(said), changesGrounds: said.map(saidOf) }
}
