import type { Hazard } from '../../src/contract/register.ts'
import { Fold } from './fold.tsx'
import { ByCalculation, type Ink } from './ink.tsx'
import { MovedBar } from './moved-bar.tsx'
import { lengthWords, percentWords, rangeWords, rateWords, yearlyWords } from './words.ts'

/** Pieces before and after control, by smallest length counted, with range and pieces a year. */
export function Misses({ hazard, unit, ink }: { hazard: Hazard; unit: string; ink: Ink }) {
  const { incidence, missesPerMillion } = hazard
  if (incidence.perMillion === null) return null
  const per = `per million ${unit}`
  return (
    <>
      <p>
        {incidence.isBound ? 'Nothing was found; at most ' : 'Arriving: '}
        {rateWords(incidence.perMillion)} {per}
        {incidence.low === null ? '' : ` (5 to 95 %: ${rangeWords(incidence.low, incidence.high)})`},{' '}
        {incidence.from === 'finds'
          ? 'from the finds log'
          : 'from the figure in the brief, so without a range'}
        <ByCalculation ink={ink} id={incidence.calculation} />. Every figure is an estimate; it means nothing
        without its smallest counted length.
      </p>
      <section class="scroll" tabindex={0} aria-label="Table that can be scrolled">
        <table class="stacks">
          <caption>{`Pieces ${per}`}</caption>
          <thead>
            <tr>
              <th scope="col">Counted</th>
              <th scope="col">Before control</th>
              <th scope="col">{incidence.isBound ? 'After, at most' : 'After, best estimate'}</th>
              <th scope="col">After, 5 to 95 %</th>
              <th scope="col">After, if controls miss the same</th>
              <th scope="col">Pieces a year</th>
            </tr>
          </thead>
          <tbody>
            {missesPerMillion.map((row) => (
              <tr>
                <th scope="row">{lengthWords(row.fromLengthMm)}</th>
                <td data-head="Before control">{rateWords(row.before)}</td>
                <td data-head={incidence.isBound ? 'After, at most' : 'After, best estimate'}>
                  {rateWords(row.after)}
                  <ByCalculation ink={ink} id={row.calculation} />
                </td>
                <td data-head="After, 5 to 95 %">
                  {incidence.isBound ? 'a bound' : rangeWords(row.low, row.high)}
                </td>
                <td data-head="After, if controls miss the same">{rateWords(row.afterDependent)}</td>
                <td data-head="Pieces a year">
                  {row.piecesAYear === null ? '–' : yearlyWords(row, incidence)}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <Moved hazard={hazard} ink={ink} per={per} />
    </>
  )
}

/** How far the assumptions about fragments move the estimate. */
function Moved({ hazard, ink, per }: { hazard: Hazard; ink: Ink; per: string }) {
  const { moved } = hazard.fragments
  if (moved.length === 0) return null
  const first = moved[0]!.missed[0]
  const stated = first?.perMillion ?? 0
  const times = moved.map(({ missed }) => {
    const one = missed[0]?.perMillion ?? 0
    return stated > 0 && one > 0 ? one / stated : null
  })
  const most = Math.max(2, ...times.map((one) => (one === null ? 1 : Math.max(one, 1 / one))))
  return (
    <Fold ink={ink} summary="What the assumed fragment sizes move">
      <section class="scroll" tabindex={0} aria-label="Table that can be scrolled">
        <table class="stacks">
          <caption>
            {`What the assumed fragment sizes move, the finds held fixed: pieces ${per}`}
            {ink.paper ? <ByCalculation ink={ink} id={hazard.incidence.calculation} /> : null}
          </caption>
          <thead>
            <tr>
              <th scope="col">Fragments</th>
              <th scope="col">Mean chance</th>
              <th scope="col">Arriving</th>
              {moved[0]!.missed.map(({ fromLengthMm }) => (
                <th scope="col">{`After, ${lengthWords(fromLengthMm)}`}</th>
              ))}
              {first ? (
                <th scope="col">{`Times the first row, ${lengthWords(first.fromLengthMm)}`}</th>
              ) : null}
            </tr>
          </thead>
          <tbody>
            {moved.map((row, k) => (
              <tr>
                <th scope="row">{row.what}</th>
                <td data-head="Mean chance">{percentWords(row.meanChance)}</td>
                <td data-head="Arriving">{rateWords(row.arrive)}</td>
                {row.missed.map(({ perMillion, fromLengthMm }) => (
                  <td data-head={`After, ${lengthWords(fromLengthMm)}`}>{rateWords(perMillion)}</td>
                ))}
                {first ? (
                  <td data-head={`Times the first row, ${lengthWords(first.fromLengthMm)}`}>
                    {times[k] == null ? (
                      '–'
                    ) : (
                      <>
                        <MovedBar times={times[k]} most={most} /> {Number(times[k].toPrecision(2))}
                      </>
                    )}
                  </td>
                ) : null}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </Fold>
  )
}
