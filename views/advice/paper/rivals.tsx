import type { Advice, Option } from '../../../src/contract/advice.ts'
import { grouped } from '../../words/grouped.ts'
import { shortName } from '../../words/machine.ts'
import { VERDICT_WORDS } from '../../words/verdict.ts'
import { metCounts } from '../sheet/machines.tsx'

/** Machines and reasons that fit on the sheet. */
const MOST_RIVALS = 4
const MOST_REASONS = 3

interface Other {
  readonly name: string
  readonly option: Option
}

/** Why not, said of all alike at once: the first reasons, and of a technology that is nowhere else on the sheet one at least. */
function reasonsTold(against: readonly Other[], families: readonly string[]) {
  const groups = [...grouped(against, ({ option }) => option.because)]
  const first = groups.slice(0, MOST_REASONS)
  const known = new Set([
    ...families,
    ...first.flatMap(([, alike]) => alike.map(({ option }) => option.family)),
  ])
  const missing = groups.find(([, alike]) => alike.some(({ option }) => !known.has(option.family)))
  return missing ? [...first.slice(0, -1), missing] : first
}

/** What else was compared where a machine is put, and why it is not that. */
export function Rivals({ advice }: { advice: Advice }) {
  const { uses } = advice.combination
  const isUsed = (point: string) => uses.length === 0 || uses.some((use) => use.point === point)
  const several = new Set(uses.map(({ point }) => point)).size > 1
  const others = advice.points
    .filter(({ name }) => isUsed(name))
    .flatMap(({ name, options }): Other[] => options.map((option) => ({ name, option })))
    .filter(({ name, option }) => !uses.some((u) => u.point === name && u.equipment === option.equipment))
    .filter(({ option }) => option.rank !== null)
  const suits = others.filter(({ option }) => option.verdict !== 'not-suitable').slice(0, MOST_RIVALS)
  const against = others.filter(({ option }) => option.verdict === 'not-suitable')
  const told = reasonsTold(
    against,
    suits.map(({ option }) => option.family),
  )
  if (others.length === 0) return null
  return (
    <>
      <h2>What else was compared</h2>
      <table>
        <tbody>
          {suits.map(({ name, option }) => (
            <tr>
              <th scope="row">
                {shortName(option)}
                {several ? `, ${name}` : ''}
              </th>
              <td>{VERDICT_WORDS[option.verdict].words}</td>
              <td>{metCounts(option)}</td>
            </tr>
          ))}
          {told.map(([reason, alike]) => (
            <tr>
              <th scope="row">{[...new Set(alike.map(({ option }) => shortName(option)))].join('; ')}</th>
              <td colspan={2}>not suitable: {reason}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  )
}
