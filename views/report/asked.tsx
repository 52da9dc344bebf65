import type { Advice } from '../../src/contract/advice.ts'
import type { Brief } from '../../src/contract/brief.ts'
import { assumedRows } from '../advice/assumed-rows.ts'
import { choiceWords } from '../words/choices.ts'
import { type Names, pieceWords } from '../words/contaminant.ts'
import { falseRejectWords } from '../words/false-rejects.ts'
import { unitOf } from '../words/path.ts'
import { sizeWords, valueWords } from '../words/size.ts'

/** What the brief says: food, flow, inspection points, contaminants, finds. */
export function Asked({ brief, advice, names }: { brief: Brief; advice: Advice; names: Names }) {
  const { flow = [], product } = brief.given
  const unitOfFind = ({ point }: Brief['finds'][number]) => {
    const line = brief.points.find(({ name }) => name === point)?.line ?? ''
    const lines = advice.register.lines.filter(({ name }) => point === undefined || name === line)
    return [...new Set(lines.map(({ unit }) => unit))].join(' or ')
  }
  return (
    <section aria-labelledby="asked">
      <h2 id="asked">What was asked</h2>
      <p>
        Food: {foodWords(product, names)}.{' '}
        {flow.length === 0
          ? 'The brief tells no flow.'
          : `Flow: ${flow.map(({ step, entersHere = [], rework }) => `${step}${entersHere.length > 0 ? ` (enters: ${entersHere.map((one) => names.get(one) ?? one).join('; ')})` : ''}${rework ? ' (rework goes back from here)' : ''}`).join(' → ')}.`}
      </p>
      <table>
        <caption>Inspection points</caption>
        <thead>
          <tr>
            <th scope="col">Point</th>
            <th scope="col">How food passes</th>
            <th scope="col">Height × width × length, mm</th>
            <th scope="col">Speed, m/min</th>
            <th scope="col">Packs a minute</th>
            <th scope="col">False rejects accepted</th>
          </tr>
        </thead>
        <tbody>
          {brief.points.map((point) => (
            <tr>
              <th scope="row">{point.name}</th>
              <td>{choiceWords('stage', point.stage)}</td>
              <td>
                {point.heightMm} × {point.widthMm} × {point.lengthMm}
              </td>
              <td>{point.speedMPerMin}</td>
              <td>{point.packsPerMin ?? '–'}</td>
              <td>{falseRejectWords(point.falseRejectsPerPack, point.packsPerMin, point.hoursPerDay)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <table>
        <caption>Contaminants</caption>
        <thead>
          <tr>
            <th scope="col">Contaminant</th>
            <th scope="col">Size to find</th>
            <th scope="col">Why that size</th>
            <th scope="col">Severity</th>
            <th scope="col">Likelihood</th>
          </tr>
        </thead>
        <tbody>
          {brief.contaminants.map((one) => (
            <tr>
              <th scope="row">{pieceWords(one, names)}</th>
              <td>{one.mustFindMm === null ? 'none set' : `${sizeWords(one.mustFindMm)} mm`}</td>
              <td>{choiceWords('basis', one.basis)}</td>
              <td>{one.severity}</td>
              <td>{one.likelihood}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {brief.finds.length === 0 ? (
        <p>No finds are logged.</p>
      ) : (
        <table>
          <caption>Finds log</caption>
          <thead>
            <tr>
              <th scope="col">Contaminant found</th>
              <th scope="col">At</th>
              <th scope="col">Looked through</th>
              <th scope="col">Pieces</th>
              <th scope="col">Events</th>
              <th scope="col">By</th>
              <th scope="col">Date</th>
              <th scope="col">Confirmed by</th>
            </tr>
          </thead>
          <tbody>
            {brief.finds.map((find) => (
              <tr>
                <th scope="row">{pieceWords(brief.contaminants[find.contaminant]!, names)}</th>
                <td>{find.point ?? 'last control'}</td>
                <td>
                  {find.packs.toLocaleString('en-GB')} {unitOfFind(find)}
                </td>
                <td>{find.found}</td>
                <td>{find.events ?? find.found}</td>
                <td>{find.by ? choiceWords('by', find.by) : '–'}</td>
                <td>{find.date ?? '–'}</td>
                <td>{find.confirmedBy ?? 'nobody'}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  )
}

/** The food by its name, or what it is made of where it has none. */
function foodWords({ food, composition, densityGPerCm3 }: Brief['given']['product'], names: Names): string {
  if (food !== 'custom') return names.get(food) ?? food
  const shares = Object.entries(composition ?? {}).map(
    ([key, percent]) => `${key.replace(/Pct$/, '')} ${percent} %`,
  )
  const density = densityGPerCm3 === undefined ? [] : [`${densityGPerCm3} g/cm³`]
  return `described by its composition: ${[...shares, ...density].join(', ')}`
}

/** Every value the brief left open, with its range and reason. */
export function AssumedValues({ advice }: { advice: Advice }) {
  const rows = assumedRows(advice)
  return (
    <section aria-labelledby="assumed">
      <h2 id="assumed">Assumptions</h2>
      {rows.length === 0 ? (
        <p>The brief gives every value that is used for the sizes.</p>
      ) : (
        <table>
          <caption>Values the brief leaves open</caption>
          <thead>
            <tr>
              <th scope="col">What</th>
              <th scope="col">Taken as</th>
              <th scope="col">Range</th>
              <th scope="col">Because</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ path, words, value, range, because }) => (
              <tr>
                <th scope="row">{words}</th>
                <td>{`${valueWords(value)} ${unitOf(path)}`.trim()}</td>
                <td>{range ? `${valueWords(range[0])} to ${valueWords(range[1])}` : '–'}</td>
                <td class="prose">{because}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  )
}
