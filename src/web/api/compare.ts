import type { Context } from 'hono'
import { comparisonWords } from '../../../views/compare/added-words.ts'
import { pieceShort } from '../../../views/words/contaminant.ts'
import { parseBrief, problemsOf } from '../../brief/index.ts'
import { asData } from '../../compare/as-data.ts'
import { type Comparison, compare } from '../../compare/comparison.ts'
import { atRate } from '../../compare/false-rejects.ts'
import { type Brief, compareRequestSchema } from '../../contract/index.ts'
import type { Advisor } from '../advisor.ts'
import { refuse } from '../asked/refusal.ts'
import { materialNames } from '../shown/choices.ts'
import { partsOfBody } from './json-body.ts'

const askedSchema = compareRequestSchema.omit({ brief: true, other: true })
const KEYS = Object.keys(compareRequestSchema.shape) as (keyof typeof compareRequestSchema.shape)[]

/** POST { brief, other?, machines?, falseRejectsPerPack? }, get what differs; 422 with the problems. */
export const compareApi = (advisor: Advisor) => async (c: Context) => {
  const { brief: given, other: givenOther, ...rest } = await partsOfBody(c, KEYS)
  const first = parseBrief(given)
  const second = givenOther === undefined ? null : parseBrief(givenOther)
  const asked = askedSchema.safeParse(rest)
  if (!first.ok || second?.ok === false || !asked.success)
    return refuse([
      ...(first.ok ? [] : first.problems.map((one) => ({ ...one, path: `brief.${one.path}` }))),
      ...(second?.ok === false ? second.problems.map((one) => ({ ...one, path: `other.${one.path}` })) : []),
      ...problemsOf(asked.error?.issues ?? [], rest, askedSchema),
    ])
  const { machines = [], falseRejectsPerPack = null } = asked.data
  const laid = async (brief: Brief, mark: string) => {
    const at = atRate(brief, falseRejectsPerPack)
    return { mark, brief: at, advice: await advisor.quick(at) }
  }
  const pieceNames = (piece: Comparison['wanted'][number]['piece']) => pieceShort(piece, materialNames)
  const how = {
    keys: machines,
    given: {},
    wordsOf: pieceNames,
    ofMaterial: (id: string) => materialNames.get(id) ?? id,
  }
  const comparison = second
    ? compare([await laid(first.brief, 'A'), await laid(second.brief, 'B')], how)
    : compare([await laid(first.brief, '')], how)
  if (comparison === null)
    return refuse([{ path: 'brief', message: 'no detector to compare stands at any point of this brief' }])
  const unknown = machines.filter((key) => !comparison.all.some((side) => side.key === key))
  if (unknown.length > 0)
    return refuse(
      unknown.map((key) => ({
        path: `machines.${machines.indexOf(key)}`,
        message: `no machine ${JSON.stringify(key)} stands here; there are ${comparison.all.map((side) => side.key).join(', ')}`,
      })),
    )
  return c.json(
    asData(
      comparison,
      comparisonWords(
        comparison,
        comparison.wanted.map(({ piece }) => pieceNames(piece)),
      ),
    ),
  )
}
