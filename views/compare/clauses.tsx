import type { Acceptance, AcceptancePiece } from '../../src/compare/acceptance.ts'
import { TERM_CHOICES } from '../../src/compare/terms.ts'
import { chanceWords, sizeWords } from '../words/size.ts'
import { COMPARE_FORM, type ComparePageProps } from './props.ts'

const count = new Intl.NumberFormat('en-GB')
const percent = (share: number) => `${Number((share * 100).toPrecision(3))} %`
const oneIn = (share: number) => `1 in ${count.format(Math.round(1 / share))}`

/** Acceptance clauses to paste into an order, with the arithmetic they stand on. */
export function Clauses(props: ComparePageProps) {
  const { comparison, printedOn, pieces } = props
  return (
    <section aria-labelledby="clauses">
      <h2 id="clauses">Acceptance clause for the order</h2>
      <p>
        Runs of one piece are not new pieces: the figure speaks of these pieces in these packs. A size the
        machine finds 9 times in 10 seldom comes through; ask for a size it finds nearly always.
      </p>
      {printedOn === null ? <TermBoxes {...props} /> : null}
      {comparison.acceptance.map((acceptance, at) =>
        printedOn !== null && isOut(acceptance) ? null : printedOn === null ? (
          <details class="clause-fold">
            <summary>
              {acceptance.side.words}: {count.format(acceptance.clean.packs)} good packs, then{' '}
              {acceptance.pieces.length === 0
                ? 'no piece that could be asked'
                : `${acceptance.pieces[0]?.runs} runs of each of ${acceptance.pieces.length} pieces`}
            </summary>
            <Clause acceptance={acceptance} pieces={pieces} at={at} />
          </details>
        ) : (
          <Clause acceptance={acceptance} pieces={pieces} at={at} />
        ),
      )}
    </section>
  )
}

/** Nobody orders a machine that does not suit: its clause is left off the paper. */
const isOut = ({ side: { option } }: Acceptance) =>
  option.verdict === 'not-suitable' || option.verdict === 'no-build'

function TermBoxes({ comparison }: ComparePageProps) {
  const { terms } = comparison
  const choose = (name: keyof typeof TERM_CHOICES, label: string, words: (value: number) => string) => (
    <div class="field">
      <label for={name}>{label}</label>
      <select id={name} name={name} form={COMPARE_FORM}>
        {TERM_CHOICES[name].map((value) => (
          <option value={String(value)} {...(value === terms[name] ? { selected: true } : {})}>
            {words(value)}
          </option>
        ))}
      </select>
    </div>
  )
  return (
    <>
      <div class="fields">
        {choose('chance', 'To be shown', (value) => `found at least ${percent(value)} of the time`)}
        {choose('confidence', 'How sure', (value) => `${percent(value)} sure, one-sided`)}
        {choose('misses', 'Misses allowed', String)}
        {choose('falseRejects', 'False rejects allowed in the clean run', String)}
      </div>
      <button type="submit" class="quiet work-out" form={COMPARE_FORM}>
        Write the clause anew
      </button>
    </>
  )
}

function Clause({
  acceptance,
  pieces,
  at,
}: {
  acceptance: Acceptance
  pieces: readonly string[]
  at: number
}) {
  const { side, terms, clean, left } = acceptance
  const { point } = side
  return (
    <article class="clause" aria-labelledby={`clause-${at}`}>
      <h3 id={`clause-${at}`}>{side.words}</h3>
      <p>
        The machine is accepted when it does all of the following at the point “{point.name}”, with our
        product at {point.product.temperatureC} °C, at {point.speedMPerMin} m/min
        {point.packsPerMin === null ? '' : ` and ${point.packsPerMin} packs a minute`}, with one setting that
        is not touched from the first run to the last.
      </p>
      <ol>
        <li>
          <strong>Clean run first.</strong> {count.format(clean.packs)} good{' '}
          {point.packsPerMin === null ? `lengths of ${point.lengthMm} mm of flow` : 'packs'} in a row
          {clean.minutes === null ? '' : ` (about ${minutesWords(clean.minutes)})`} with{' '}
          {falseRejectsWords(terms.falseRejects)}: this shows false rejects of no more than{' '}
          {oneIn(clean.falseRejectsPerPack)}, {percent(terms.confidence)} sure.
        </li>
        {acceptance.pieces.map((piece) => (
          <PieceItem
            piece={piece}
            words={pieces[piece.contaminant] ?? ''}
            terms={terms}
            family={side.option.family}
          />
        ))}
        <li>
          <strong>Every run</strong> in another pack of ordinary production, the piece placed in the product
          and counted back; a detected pack must also leave the line.
        </li>
        <li>
          <strong>On our site.</strong> The same is repeated after installation, with the same pieces, and
          holds there.
        </li>
      </ol>
      <p class="small">
        Ground: with {terms.misses} missed of {acceptance.pieces[0]?.runs ?? '–'} the exact binomial bound
        (Clopper and Pearson, one-sided) puts the chance of finding at {percent(terms.chance)} or more,{' '}
        {percent(terms.confidence)} sure. A machine with half the false rejects allowed comes through the
        clean run with a chance of {percent(clean.comesThroughAtHalf)}; allow some false rejects over more
        packs if that is too hard.
      </p>
      {left.length > 0 ? (
        <p class="small">
          Not in the clause:{' '}
          {left.map(({ contaminant, because }) => `${pieces[contaminant]} (${because})`).join('; ')}.
        </p>
      ) : null}
    </article>
  )
}

function minutesWords(minutes: number): string {
  return minutes < 90 ? `${Math.ceil(minutes)} minutes` : `${Number((minutes / 60).toPrecision(2))} hours`
}

const falseRejectsWords = (most: number) =>
  most === 0 ? 'no false reject' : `at most ${most} false ${most === 1 ? 'reject' : 'rejects'}`

interface PieceProps {
  readonly piece: AcceptancePiece
  readonly words: string
  readonly terms: Acceptance['terms']
  readonly family: string
}

function PieceItem({ piece, words, terms, family }: PieceProps) {
  const { lies, runs, sizeMm, notCovered, comesThrough, origin } = piece
  const open = notCovered.filter(({ place }) => place !== piece.place)
  return (
    <li>
      <strong>
        {words}, {sizeMm} mm:
      </strong>{' '}
      {lies.map((lie) => `${runs} runs${lie === '' ? '' : ` ${lie}`}`).join(' and ')},{' '}
      {placeWords(piece, family)}, {terms.misses === 0 ? 'none missed' : `at most ${terms.misses} missed`}
      {lies.length > 1 ? ' each way' : ''}.{' '}
      <span class="small">
        {origin === 'asked' ? 'The size you must find.' : 'No size was asked; this is what can be promised.'}{' '}
        {comesThrough === null
          ? ''
          : `A machine that finds as expected here comes through with a chance of ${chanceWords(comesThrough)}.`}{' '}
        {open.length === 0
          ? ''
          : `Not covered: ${open.map(({ place, sizeMm: there }) => `${place} (${there === null ? 'nothing is found there' : `${sizeWords(there)} mm expected there`})`).join(', ')}.`}
      </span>
    </li>
  )
}

function placeWords({ place }: AcceptancePiece, family: string): string {
  if (place !== '') return `at this place: ${place}`
  return family === 'xray' ? 'under the thickest place of the pack' : 'in the centre of the opening'
}
