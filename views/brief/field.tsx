import { raw } from 'hono/html'
import type { Child } from 'hono/jsx'
import { fieldAt } from '../../src/brief/form/form-fields.ts'
import { hintOf, labelOf, rangeOf } from '../../src/brief/form/form-labels.ts'
import { choiceWords } from '../words/choices.ts'
import { NoteLine } from './note-line.tsx'
import type { Option, OptionGroup, Sheet } from './sheet.ts'

interface FieldProps {
  readonly sheet: Sheet
  readonly path: string
  /** In a table the column says what it is: the label is for readers who do not see the table. */
  readonly inTable?: boolean
}

/** Fields without which there is no answer at all; the rest is assumed and said so. */
const NEEDED = /^product\.food$|^points\.\d+\.(heightMm|speedMPerMin)$/
export const isNeeded = (path: string): boolean => NEEDED.test(path)

const describedBy = (sheet: Sheet, path: string, hint: string) => ({
  'aria-describedby': [
    hint ? `hint-${path}` : '',
    sheet.problems.has(path) ? `error-${path}` : '',
    `note-${path}`,
  ]
    .filter((id) => id !== '')
    .join(' '),
  ...(sheet.problems.has(path) ? { 'aria-invalid': 'true' as const } : {}),
})

const focusOn = (sheet: Sheet, path: string) => (sheet.focus === path ? { autofocus: true } : {})

function Hint({ path, text }: { path: string; text: string }) {
  return text ? (
    <p class="hint" id={`hint-${path}`}>
      {text}
    </p>
  ) : null
}

function Wrong({ sheet, path }: FieldProps) {
  const message = sheet.problems.get(path)
  return message ? (
    <p class="error" id={`error-${path}`}>
      <span class="unseen">Error: </span>
      {message}
    </p>
  ) : null
}

function Framed({
  sheet,
  path,
  hint,
  wide,
  inTable,
  children,
}: FieldProps & { hint: string; wide?: boolean; children: Child }) {
  return (
    <div class={`field${sheet.problems.has(path) ? ' wrong' : ''}${wide ? ' wide' : ''}`}>
      <label for={path} {...(inTable ? { class: 'unseen' } : {})}>
        {labelOf(path)}
        {isNeeded(path) ? <span class="needed"> needed</span> : null}
      </label>
      <Hint path={path} text={hint} />
      <Wrong sheet={sheet} path={path} />
      {children}
      <NoteLine path={path} note={sheet.notes.get(path)} />
    </div>
  )
}

const empty = new Map<string, ReturnType<typeof raw>>()
/** So many are kept: a dozen rows of every list. */
const MOST_KEPT = 4000

/**
 * A field that nobody filled in, drawn once: of a form of hundreds of fields most are empty, and alike in every brief.
 * `about` says what else tells one from another.
 */
function onceEmpty({ sheet, path, inTable }: FieldProps, about: string, draw: () => Child) {
  const isOwn =
    (sheet.answers[path] ?? '') !== '' ||
    sheet.problems.has(path) ||
    sheet.notes.has(path) ||
    sheet.focus === path
  if (isOwn) return draw()
  const key = `${path} ${inTable ?? ''} ${about}`
  const drawn = empty.get(key) ?? raw(String(draw()))
  if (empty.size >= MOST_KEPT) empty.clear()
  empty.set(key, drawn)
  return drawn
}

/** A number with its unit outside the box; any unit may be typed. */
export const Measure = (props: FieldProps) => <>{onceEmpty(props, 'measure', () => MeasureField(props))}</>

function MeasureField({ sheet, path, inTable }: FieldProps) {
  const field = fieldAt(path)
  const unit = field?.kind === 'measure' ? field.unit : ''
  const hint = [hintOf(path), `${rangeOf(path)}.`].filter((part) => part !== '').join(' ')
  return (
    <Framed sheet={sheet} path={path} hint={hint} {...(inTable ? { inTable } : {})}>
      <span class="measure">
        <input
          type="text"
          inputmode="decimal"
          autocomplete="off"
          id={path}
          name={path}
          value={sheet.answers[path] ?? ''}
          {...describedBy(sheet, path, hint)}
          {...focusOn(sheet, path)}
        />
        {unit ? <span class="unit">{unit}</span> : null}
      </span>
    </Framed>
  )
}

/** Words in one line. */
export const Line = (props: FieldProps) => <>{onceEmpty(props, 'line', () => LineField(props))}</>

function LineField({ sheet, path, inTable }: FieldProps) {
  const hint = hintOf(path)
  return (
    <Framed sheet={sheet} path={path} hint={hint} {...(inTable ? { inTable } : { wide: true })}>
      <input
        type="text"
        autocomplete="off"
        id={path}
        name={path}
        value={sheet.answers[path] ?? ''}
        {...describedBy(sheet, path, hint)}
        {...focusOn(sheet, path)}
      />
    </Framed>
  )
}

type ChooseProps = FieldProps & { groups?: readonly OptionGroup[]; empty: string }

/** A list to choose from; `groups` where it is longer than a few words of the contract. */
export const Choose = (props: ChooseProps) => (
  <>{props.groups ? ChooseField(props) : onceEmpty(props, props.empty, () => ChooseField(props))}</>
)

function ChooseField({ sheet, path, groups, empty, inTable }: ChooseProps) {
  const hint = hintOf(path)
  const given = sheet.answers[path] ?? ''
  const shown = groups ?? ownChoicesOf(path)
  const known = given === '' || shown.some((group) => group.options.some((option) => option.value === given))
  return (
    <Framed sheet={sheet} path={path} hint={hint} {...(inTable ? { inTable } : {})}>
      <select id={path} name={path} {...describedBy(sheet, path, hint)} {...focusOn(sheet, path)}>
        <option value="">{empty}</option>
        {known ? null : (
          <option value={given} selected>
            {given}
          </option>
        )}
        {optionsOf(shown, known ? given : '')}
      </select>
    </Framed>
  )
}

const drawn = new WeakMap<readonly OptionGroup[], Map<string, ReturnType<typeof raw>>>()

/** The options of a list, one chosen; drawn once, because a long list stands in every row of the form. */
function optionsOf(groups: readonly OptionGroup[], given: string) {
  const known = drawn.get(groups) ?? new Map<string, ReturnType<typeof raw>>()
  drawn.set(groups, known)
  const options = known.get(given) ?? raw(String(<OptionList groups={groups} given={given} />))
  known.set(given, options)
  return options
}

function OptionList({ groups, given }: { groups: readonly OptionGroup[]; given: string }) {
  return (
    <>
      {groups.map((group) =>
        group.words === '' ? (
          <Options options={group.options} given={given} />
        ) : (
          <optgroup label={group.words}>
            <Options options={group.options} given={given} />
          </optgroup>
        ),
      )}
    </>
  )
}

function Options({ options, given }: { options: readonly Option[]; given: string }) {
  return (
    <>
      {options.map(({ value, words }) => (
        <option value={value} {...(value === given ? { selected: true } : {})}>
          {words}
        </option>
      ))}
    </>
  )
}

const own = new Map<string, readonly OptionGroup[]>()

/** The contract's choices of a field as one nameless group, the same one for every row it stands in. */
function ownChoicesOf(path: string): readonly OptionGroup[] {
  const column = path.replace(/\d+/g, '#')
  const known = own.get(column) ?? [{ words: '', options: choicesOf(path) }]
  own.set(column, known)
  return known
}

/** The contract's own choices of a field, in our words. */
function choicesOf(path: string): Option[] {
  const field = fieldAt(path)
  if (field?.kind === 'yes-no')
    return [
      { value: 'yes', words: 'Yes' },
      { value: 'no', words: 'No' },
    ]
  const key = path.split('.').at(-1) ?? ''
  if (field?.kind === 'measure') {
    const scale = Array.from({ length: field.max - field.min + 1 }, (_, at) => String(field.min + at))
    return scale.map((value) => ({ value, words: choiceWords(key, value) }))
  }
  return field?.kind === 'choice'
    ? field.choices.map((value) => ({ value, words: choiceWords(key, value) }))
    : []
}
