import { mmAxis } from '../../src/charts/mm-axis.ts'
import { SizeLadder } from '../../src/charts/size-ladder.tsx'
import type { RunsAnswer } from '../../src/contract/runs.ts'
import { sizeWords } from '../words/size.ts'
import type { ShownGroup } from './props.ts'
import { rateWords } from './run-words.ts'

/** Sizes shown, machine beside machine, and the same packs on two machines. */
export function SideBySide({ shown, answer }: { shown: readonly ShownGroup[]; answer: RunsAnswer }) {
  if (shown.length < 2 && answer.paired.length === 0) return null
  return (
    <section aria-labelledby="side-by-side">
      <h2 id="side-by-side">Side by side</h2>
      <SizeLadder
        id="shown-sizes"
        title="Sizes shown in this trial"
        description="For each group of runs a bar from the 90 % size (best guess) to the size shown with 95 % confidence; groups that show nothing say so. The numbers stand beneath."
        axis={mmAxis(
          shown.flatMap(({ group }) => [group.a50, group.a90, group.demonstrated?.sizeMm ?? null]),
        )}
        mustFindMm={null}
        mustFindWords=""
        groups={[{ name: '', rows: shown.map(rowOf) }]}
      />
      <section class="scroll" tabindex={0} aria-label="Sizes shown">
        <table class="routes">
          <caption>Sizes shown</caption>
          <thead>
            <tr>
              <th scope="col">Runs</th>
              <th scope="col">Pieces</th>
              <th scope="col">90 % size, best guess, mm</th>
              <th scope="col">Found 9 times in 10, 95 % sure, mm</th>
              <th scope="col">False rejects</th>
            </tr>
          </thead>
          <tbody>
            {shown.map(({ group, title }) => (
              <tr>
                <th scope="row">{title}</th>
                <td class="n">{group.pieces}</td>
                <td class="n">{sizeWords(group.a90)}</td>
                <td class="n">{group.demonstrated ? group.demonstrated.sizeMm : 'not demonstrated'}</td>
                <td>{group.clean ? rateWords(group.clean) : 'not known'}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {answer.paired.length > 0 ? <SamePacks answer={answer} /> : null}
    </section>
  )
}

function rowOf({ group, title }: ShownGroup) {
  const shown = group.demonstrated
  return {
    label: title,
    bestMm: null,
    halfMm: null,
    expectedMm: shown ? Math.min(group.a90 ?? shown.sizeMm, shown.sizeMm) : null,
    sureMm: null,
    cautiousMm: shown?.sizeMm ?? null,
    mark: shown ? '● shown' : '○ not demonstrated',
    numbers: shown ? `${shown.sizeMm} mm` : '',
    ruledOut: false,
  }
}

function SamePacks({ answer }: { answer: RunsAnswer }) {
  return (
    <section class="scroll" tabindex={0} aria-label="The same pieces in the same packs, through both">
      <table>
        <caption>The same pieces in the same packs, through both</caption>
        <thead>
          <tr>
            <th scope="col">Machines</th>
            <th scope="col">Both found</th>
            <th scope="col">Only the first</th>
            <th scope="col">Only the second</th>
            <th scope="col">Neither</th>
            <th scope="col">What it shows</th>
          </tr>
        </thead>
        <tbody>
          {answer.paired.map((pair) => (
            <tr>
              <th scope="row">{`${pair.first} and ${pair.second}`}</th>
              <td class="n">{pair.both}</td>
              <td class="n">{pair.onlyFirst}</td>
              <td class="n">{pair.onlySecond}</td>
              <td class="n">{pair.neither}</td>
              <td>
                {pair.words}
                {pair.p === null ? '' : ` (exact McNemar, p ${pair.p.toFixed(3)})`}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
