import type { Advice, Calculation } from '../../../src/contract/advice.ts'
import { CURRENT_LIMIT_WORDS, doseWords, timesBelow } from '../../words/dose.ts'
import { settingsWords } from '../first/settings-words.ts'
import { type Links, trailLink } from '../links.ts'

/** What the law of the brief's market allows, and what is said to be usual; null where nothing is known here. */
export interface DoseLaw {
  readonly ceiling: { readonly gray: number; readonly rule: string; readonly source: string } | null
  readonly usualMicroGy: number
  readonly usualSource: string
}

interface Row {
  readonly words: string
  readonly tube: string
  readonly limit: string
  readonly dose: Calculation & { readonly value: number }
}

interface Props {
  readonly advice: Advice
  readonly links: Links
  readonly law: DoseLaw
  readonly print: boolean
}

/** How each x-ray machine is set, and how little one pass leaves in the food beside what the law allows. */
export function TubeAndDose({ advice, links, law, print }: Props) {
  const rows = rowsOf(advice)
  if (rows.length === 0) return null
  return (
    <div class="tube-and-dose">
      <p>
        <strong>X-raying is not irradiating.</strong> {doseSentence(rows, law)}
      </p>
      <details {...(print ? { open: true } : {})}>
        <summary>Tube and dose of each x-ray machine</summary>
        <section class="scroll" tabindex={0} aria-labelledby="tube-and-dose">
          <table>
            <caption id="tube-and-dose">Setting, and what one pass leaves in the food (±25 %)</caption>
            <thead>
              <tr>
                <th scope="col">Point and machine</th>
                <th scope="col">Tube</th>
                <th scope="col">What limits the current</th>
                <th scope="col" class="n">
                  Dose of one pass
                </th>
                {law.ceiling ? (
                  <th scope="col" class="n">
                    Under the bound of {law.ceiling.gray} Gy
                  </th>
                ) : null}
              </tr>
            </thead>
            <tbody>
              {rows.map(({ words, tube, limit, dose }) => (
                <tr>
                  <th scope="row">{words}</th>
                  <td>{tube}</td>
                  <td>{limit}</td>
                  <td class="n">
                    <a class="target" href={trailLink(links, dose.id)}>
                      {doseWords(dose.value)}
                    </a>
                  </td>
                  {law.ceiling ? <td class="n">{timesBelow(dose.value, law.ceiling.gray)}</td> : null}
                </tr>
              ))}
            </tbody>
          </table>
        </section>
        <p class="small">
          {law.ceiling ? `Bound: ${law.ceiling.rule}. ${law.ceiling.source} ` : ''}
          {usualSentence(rows, law)} {law.usualSource}
        </p>
      </details>
    </div>
  )
}

function rowsOf(advice: Advice): Row[] {
  const calculations = new Map(advice.trace.calculations.map((one) => [one.id, one]))
  return advice.points.flatMap((point, at) =>
    point.options.flatMap((option) => {
      const prefix = `p${at}.${option.equipment}`
      const dose = calculations.get(`${prefix}.dose`)
      if (option.family !== 'xray' || !dose || typeof dose.value !== 'number') return []
      const limit = calculations.get(`${prefix}.mA`)?.formula.replace(/^limited by: /, '') ?? ''
      return [
        {
          words: advice.points.length > 1 ? `${point.name}: ${option.label}` : option.label,
          tube: settingsWords(option),
          limit: CURRENT_LIMIT_WORDS[limit] ?? limit,
          dose: { ...dose, value: dose.value },
        },
      ]
    }),
  )
}

const extremes = (rows: readonly Row[]) => {
  const values = rows.map(({ dose }) => dose.value)
  return [Math.min(...values), Math.max(...values)] as const
}

function doseSentence(rows: readonly Row[], { ceiling }: DoseLaw): string {
  const [least, most] = extremes(rows)
  const range =
    doseWords(least) === doseWords(most)
      ? `about ${doseWords(most)}`
      : `${doseWords(least)} to ${doseWords(most)}`
  const beside = ceiling
    ? `the most of these is ${timesBelow(most, ceiling.gray)} than the ${ceiling.gray} Gy named in ${ceiling.rule.split(',')[0]}`
    : 'the bound in your law has to be looked up; this program knows the figures of the US, the EU and the UK only'
  return `One pass leaves ${range} in the food; ${beside}.`
}

/** The published statement beside our own figures, whichever way it falls. */
function usualSentence(rows: readonly Row[], { usualMicroGy }: DoseLaw): string {
  const above = rows.filter(({ dose }) => dose.value > usualMicroGy).length
  const usual = `An authority calls ${doseWords(usualMicroGy)} or less typical of objects in x-ray cabinets`
  if (above === 0) return `${usual}, as computed here.`
  const which = above === rows.length ? 'all' : `${above} of ${rows.length}`
  return `${usual}; ${which} of the figures above are higher: these tubes are taken to run at full current, close to the belt.`
}
