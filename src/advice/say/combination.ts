import type { Advice } from '../../contract/index.ts'
import type { Answered, Use } from '../stages.ts'
import { joined, saidOf } from './said.ts'
import { stillEnters } from './still-enters.ts'

type Uses = Advice['combination']['uses']
type Unmet = Advice['combination']['unmet']

/** Contaminants a machine in use is expected to meet, without a promise. */
const expectedOf = ({ option, contaminants }: Use) =>
  contaminants.filter((c) =>
    option.findings.some(({ contaminant, meets }) => contaminant === c && meets === 'maybe'),
  )

/** Sizes asked that nothing on the line meets, with what is achievable; why is what the answer says of them. */
function unmetOf({ brief, lines }: Answered, rows: Advice['answer']['rows']): Unmet {
  return lines.flatMap(({ name, rows: ordered }) =>
    ordered.flatMap(({ contaminant, by, point, option, finding }) => {
      if (by === 'use' || brief.contaminants[contaminant]!.mustFindMm === null) return []
      const row = rows.find((one) => one.line === name && one.contaminant === contaminant)!
      return [
        {
          line: name,
          contaminant,
          achievableMm: finding?.cautiousMm ?? null,
          equipment: option?.equipment ?? null,
          point: point === null ? null : brief.points[point]!.name,
          why: row.left.text,
        },
      ]
    }),
  )
}

/** The smallest sets of the lines in words, with what they leave, what may be multiplied and what can still enter. */
export function combinationWords(answered: Answered, rows: Advice['answer']['rows']): Advice['combination'] {
  const { brief, lines, answers } = answered
  const fired = answers.filter(({ outcome }) => outcome === 'fired')
  const said = fired.filter(({ type }) => type === 'combines')
  const multiplied = fired.filter(({ type }) => type === 'multiplies')
  const onItsLine = (one: (typeof fired)[number]) => ({ line: lines[one.line!]!.name, ...saidOf(one) })
  return {
    uses: lines.flatMap(
      ({ name, combined }): Uses =>
        combined.uses.map((use) => ({
          line: name,
          point: brief.points[use.point]!.name,
          equipment: use.option.equipment,
          contaminants: [...use.contaminants],
          expected: expectedOf(use),
        })),
    ),
    unmet: unmetOf(answered, rows),
    because: joined(said),
    grounds: said.map(onItsLine),
    independence: joined(multiplied),
    independenceGrounds: multiplied.map(onItsLine),
    stillEnters: stillEnters(brief, answered.outcomes),
  }
}
