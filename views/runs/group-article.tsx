import { mmAxis } from '../../src/charts/mm-axis.ts'
import { TrialPlot } from '../../src/charts/trial-plot.tsx'
import { chanceWords, sizeWords } from '../words/size.ts'
import type { ShownGroup } from './props.ts'
import { countWords } from './run-words.ts'

/** One group of runs: what it shows, its picture, and every number beneath. */
export function GroupArticle({ shown, at }: { shown: ShownGroup; at: number }) {
  const { group, title, prediction, clause } = shown
  return (
    <article class="trial-group" aria-labelledby={`group-${at}`}>
      <h3 id={`group-${at}`}>{title}</h3>
      <p class={group.demonstrated ? 'answer' : ''}>{group.words}</p>
      {clause ? (
        <p>
          <strong>{clause.words}</strong>
        </p>
      ) : null}
      {prediction ? <p>{prediction.words}</p> : null}
      <Picture shown={shown} at={at} />
      <section class="scroll" tabindex={0} aria-label="Sizes one by one">
        <Sizes shown={shown} />
      </section>
      <Numbers shown={shown} />
    </article>
  )
}

function Picture({ shown, at }: { shown: ShownGroup; at: number }) {
  const { group, title, dots, fitted, prediction } = shown
  const curve = prediction?.curve.sizesMm.map((mm, i) => [mm, prediction.curve.chance[i]!] as const) ?? []
  const axis = mmAxis([
    ...dots.map(({ sizeMm }) => sizeMm),
    group.demonstrated?.sizeMm ?? null,
    prediction?.expectedMm ?? null,
  ])
  const marks = [
    ...(group.demonstrated
      ? [{ mm: group.demonstrated.sizeMm, words: `shown ${group.demonstrated.sizeMm} mm` }]
      : []),
    ...(prediction?.expectedMm
      ? [{ mm: prediction.expectedMm, words: `expected ${sizeWords(prediction.expectedMm)} mm` }]
      : []),
  ]
  return (
    <figure class="trial-figure">
      <TrialPlot
        id={`trial-${at}`}
        title={`Share found against size: ${title}`}
        description={`Dots are shares found with their exact range; ${fitted.length > 0 ? 'the full line is the curve through them' : 'no curve is drawn through them'}${curve.length > 0 ? '; the broken line is the prediction' : ''}. The numbers stand beneath.`}
        axis={axis}
        dots={dots}
        curves={[
          ...(fitted.length > 0 ? [{ words: 'fitted', points: fitted, dashed: false }] : []),
          ...(curve.length > 0 ? [{ words: 'predicted', points: curve, dashed: true }] : []),
        ]}
        marks={marks}
      />
      <figcaption class="caption-line">
        {`Dots: share found, with the range of 95 in 100. ${fitted.length > 0 ? 'Full line: curve through them. ' : ''}${curve.length > 0 ? 'Broken line: predicted before the trial.' : ''}`}
      </figcaption>
    </figure>
  )
}

function Sizes({ shown: { group, prediction } }: { shown: ShownGroup }) {
  return (
    <table>
      <caption>Sizes one by one (at least: 95 % sure)</caption>
      <thead>
        <tr>
          <th scope="col">Size, mm</th>
          <th scope="col" class="n">
            Pieces
          </th>
          <th scope="col" class="n">
            Found
          </th>
          <th scope="col" class="n">
            At least
          </th>
          {prediction ? (
            <th scope="col" class="n">
              Predicted
            </th>
          ) : null}
        </tr>
      </thead>
      <tbody>
        {group.exact.map((row, i) => (
          <tr>
            <th scope="row">{row.sizeMm}</th>
            <td class="n">{row.runs}</td>
            <td class="n">{row.found}</td>
            <td class="n">{row.found === 0 ? 'nothing' : chanceWords(row.lower95)}</td>
            {prediction ? <td class="n">{chanceWords(prediction.sizes[i]?.predicted ?? null)}</td> : null}
          </tr>
        ))}
      </tbody>
    </table>
  )
}

function Numbers({ shown: { group } }: { shown: ShownGroup }) {
  const { clean, signal, card } = group
  return (
    <details>
      <summary>All numbers of this group</summary>
      <dl class="uses">
        <dt>50 % size, 90 % size (best guess)</dt>
        <dd>{`${sizeWords(group.a50)} and ${sizeWords(group.a90)} mm`}</dd>
        <dt>90 % size, 95 % sure</dt>
        <dd>
          {`${sizeWords(group.a9095)} mm by the penalised profile, which is what counts; for comparison ${sizeWords(group.a9095Plain)} by the plain profile, ${sizeWords(group.a9095Delta)} by the delta method.`}
        </dd>
        <dt>Curve</dt>
        <dd>
          {group.fit
            ? `${group.fit.link} in ln size: ${group.fit.b0.toFixed(4)} + ${group.fit.b1.toFixed(4)}·ln(size in mm), rejects with nothing to find ${(group.fit.floor * 1000).toFixed(2)} in 1,000${group.fit.separated ? '; sizes do not overlap' : ''}`
            : 'none: one size only'}
        </dd>
        <dt>Clean packs</dt>
        <dd>
          {clean
            ? `${countWords(clean.rejects)} of ${countWords(clean.packs)} rejected; at most ${(clean.high * 1000).toPrecision(2)} in 1,000, 95 % sure`
            : 'none'}
        </dd>
        <dt>As a card is read</dt>
        <dd>
          {card
            ? `found without a miss down to ${card.downToMm} mm: the size lies between ${card.interval[0] ?? 0} and ${card.downToMm} mm`
            : 'the largest size was missed at least once'}
        </dd>
        {signal ? (
          <>
            <dt>By the machine’s signal</dt>
            <dd>
              {`90 % size ${sizeWords(signal.a90)} mm, 95 % sure ${sizeWords(signal.a9095)} mm, from ${signal.pieces} readings (${signal.censored} without a number)${signal.margin === null ? '' : `; there the piece stands ${signal.margin.toFixed(1)} times above the largest signal of a clean pack`}.`}
            </dd>
          </>
        ) : null}
      </dl>
    </details>
  )
}
