import type { Advice, Finding } from '../../src/contract/advice.ts'
import type { Brief } from '../../src/contract/brief.ts'
import type { ReportTrial } from '../../src/report/trial-in-report.ts'
import { groupTitle } from '../runs/run-words.ts'
import { type Names, pieceWords } from '../words/contaminant.ts'
import { shownWords } from '../words/demonstrated.ts'
import { chanceWords, sizeWords } from '../words/size.ts'

const mm = (value: number | null | undefined) => (value == null ? 'none' : `${sizeWords(value)} mm`)

interface TrialedProps {
  readonly advice: Advice
  readonly brief: Brief
  readonly names: Names
  readonly trial: ReportTrial | null
}

/** What trials on this product showed, beside what is predicted and never mixed with it. */
export function Trialed({ advice, brief, names, trial }: TrialedProps) {
  const about = [
    ...new Map(
      [...brief.demonstrated, ...brief.measured].map((one) => [
        `${one.point}|${one.equipment}|${one.contaminant}`,
        one,
      ]),
    ).values(),
  ]
  return (
    <section aria-labelledby="demonstrated">
      <h2 id="demonstrated">What trials on this product showed</h2>
      {about.length === 0 ? (
        <p>No trial on this product stands in the brief: nothing here is demonstrated.</p>
      ) : null}
      {about.length === 0 ? null : (
        <table>
          <caption>Demonstrated beside predicted</caption>
          <thead>
            <tr>
              <th scope="col">Machine, point, piece</th>
              <th scope="col">Predicted before: expected, safe to promise</th>
              <th scope="col">After the trial: expected, safe to promise</th>
              <th scope="col">Demonstrated</th>
            </tr>
          </thead>
          <tbody>
            {about.map(({ point, equipment, contaminant }) => {
              const at = { point, equipment, contaminant }
              const now = findingAt(advice, at)
              const was = trial ? findingAt(trial.before, at) : null
              const measured = brief.measured.some((one) => same(one, at))
              const shown = brief.demonstrated.findLast((one) => same(one, at))
              return (
                <tr>
                  <th scope="row">
                    {labelAt(advice, at)}, {point}: {pieceWords(brief.contaminants[contaminant ?? 0]!, names)}
                  </th>
                  <td>{was || !measured ? bothWords(was ?? now) : 'not kept with the brief'}</td>
                  <td>{measured ? bothWords(now) : 'unchanged'}</td>
                  <td class="prose">{shown ? placedWords(shown) : 'not demonstrated'}</td>
                </tr>
              )
            })}
          </tbody>
        </table>
      )}
      {trial ? <Groups trial={trial} names={names} /> : null}
    </section>
  )
}

interface At {
  readonly point: string
  readonly equipment: string
  readonly contaminant?: number | undefined
}

const same = (one: At, at: At) =>
  one.point === at.point && one.equipment === at.equipment && one.contaminant === at.contaminant

const optionAt = (advice: Advice, { point, equipment }: At) =>
  advice.points.find(({ name }) => name === point)?.options.find((option) => option.equipment === equipment)

const labelAt = (advice: Advice, at: At): string => optionAt(advice, at)?.label ?? at.equipment

const findingAt = (advice: Advice, at: At): Finding | null =>
  optionAt(advice, at)?.findings.find((finding) => finding.contaminant === at.contaminant) ?? null

const bothWords = (finding: Finding | null) =>
  finding ? `${mm(finding.expectedMm)}, ${mm(finding.cautiousMm)}` : 'no longer compared'

const placedWords = (shown: Brief['demonstrated'][number]) =>
  [
    shownWords(shown),
    shown.basis === 'curve' ? 'by the curve, 95 % sure' : 'exact at one size, 95 % sure',
    shown.position ? `at ${shown.position}` : '',
    shown.setting ? `setting ${shown.setting}` : '',
    shown.serial ? `plate ${shown.serial}` : '',
  ]
    .filter((word) => word !== '')
    .join('; ')

/** The groups of a trial: what each shows, how it agrees with the prediction, and its counts. */
function Groups({ trial: { answer, before }, names }: { trial: ReportTrial; names: Names }) {
  const labels = new Map(
    before.points.flatMap(({ options }) => options.map(({ equipment, label }) => [equipment, label])),
  )
  return (
    <>
      {answer.missing.map((sentence) => (
        <p>{sentence}</p>
      ))}
      {answer.groups.map((group, at) => {
        const prediction = answer.prediction?.find((one) => one.group === at) ?? null
        return (
          <section>
            <h3>
              {groupTitle({ ...group, equipment: labels.get(group.equipment) ?? group.equipment }, names)}
            </h3>
            <p>
              {group.words}{' '}
              {prediction?.words ??
                'Nothing in the brief is the same machine and piece, so nothing is compared.'}
            </p>
            <table>
              <caption>Counts, size by size</caption>
              <thead>
                <tr>
                  <th scope="col">Size, mm</th>
                  <th scope="col">Pieces run</th>
                  <th scope="col">Found</th>
                  <th scope="col">Found at least, 95 % sure</th>
                  <th scope="col">Predicted chance before</th>
                </tr>
              </thead>
              <tbody>
                {group.exact.map((row, i) => (
                  <tr>
                    <th scope="row">{row.sizeMm}</th>
                    <td>{row.runs}</td>
                    <td>{row.found}</td>
                    <td>{row.found === 0 ? 'nothing' : chanceWords(row.lower95)}</td>
                    <td>{chanceWords(prediction?.sizes[i]?.predicted ?? null)}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </section>
        )
      })}
    </>
  )
}
