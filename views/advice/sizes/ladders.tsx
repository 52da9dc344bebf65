import type { Advice } from '../../../src/contract/advice.ts'
import { type Names, pieceShort } from '../../words/contaminant.ts'
import { type Links, ladderLink } from '../links.ts'
import { Opens } from '../parts/opens.tsx'
import { type Wanted, wantedOf } from './findings.ts'
import { Ladder, linesOf } from './ladder.tsx'
import { axisOf } from './size-axis.ts'

interface Props {
  readonly advice: Advice
  readonly names: Names
  readonly links: Links
  /** For paper: nothing folded. */
  readonly print?: boolean
}

/** Ladders that stand open, where something is left to do about their contaminants. */
const MOST_OPEN = 2

/** Sizes by machine: a ladder per contaminant on one axis; open where a size is not promised, else behind a link. */
export function Ladders({ advice, names, links, print = false }: Props) {
  const axis = axisOf(advice)
  const all = wantedOf(advice)
  const unmet = advice.answer.rows.filter(({ meets }) => meets === 'no' || meets === 'maybe')
  const chosen = new Set(
    (unmet.length > 0 ? unmet : advice.answer.rows).map(({ contaminant }) => contaminant),
  )
  const open = new Set(print ? all.map(({ contaminant }) => contaminant) : [...chosen].slice(0, MOST_OPEN))
  return (
    <section aria-labelledby="sizes">
      <h2 id="sizes">Sizes by machine</h2>
      <p class="small">
        {advice.points.length > 1
          ? `${advice.points.map(({ name }, at) => `${at + 1} ${name}`).join(' · ')}; mm, log scale`
          : 'Sizes in mm, log scale'}
        {all.some((wanted) => linesOf(advice, wanted).some(isHollow)) ? '; a hollow bar: not suitable' : ''}
      </p>
      <div class="ladders">
        {all
          .filter(({ contaminant }) => open.has(contaminant))
          .map((wanted) => (
            <Ladder {...{ advice, wanted, names, links, axis }} />
          ))}
      </div>
      {all
        .filter(({ contaminant }) => !open.has(contaminant))
        .map((wanted) => (
          <Opens
            id={`fold-ladder-${wanted.contaminant}`}
            href={ladderLink(links, wanted.contaminant)}
            words={pieceShort(wanted, names)}
            inside={insideWords(advice, wanted)}
          />
        ))}
    </section>
  )
}

const isHollow = ({ option, finding }: ReturnType<typeof linesOf>[number]) =>
  option.verdict === 'not-suitable' && finding.expectedMm !== null

/** "asked 4 mm: promised by 3 of 11, expected from 2". */
function insideWords(advice: Advice, wanted: Wanted): string {
  const lines = linesOf(advice, wanted)
  const count = (...meets: string[]) => lines.filter(({ finding }) => meets.includes(finding.meets)).length
  if (wanted.mustFindMm === null)
    return `no size asked: seen by ${lines.filter(({ finding }) => finding.expectedMm !== null).length} of ${lines.length}`
  const expected = count('maybe')
  return `asked ${wanted.mustFindMm} mm: promised by ${count('yes', 'partly')} of ${lines.length}${expected > 0 ? `, expected of ${expected}` : ''}`
}
