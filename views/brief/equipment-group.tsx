import { rowsOf } from '../../src/brief/form/form-index.ts'
import { hintOf, labelOf } from '../../src/brief/form/form-labels.ts'
import { GroupFold } from './fold.tsx'
import { NoteLine } from './note-line.tsx'
import { QuotedMachines } from './quoted-machines.tsx'
import { ListError } from './row-buttons.tsx'
import type { Option, Sheet } from './sheet.ts'

/** Which machines to compare: ready-made kinds by tick, quoted ones by their figures, others as JSON. */
export function EquipmentGroup({ sheet }: { sheet: Sheet }) {
  const ticked = Object.keys(sheet.answers).filter(
    (path) => path.startsWith('equipment.') && sheet.answers[path] === 'on',
  )
  const known = new Set(sheet.machines.map(({ value }) => `equipment.${value}`))
  const strangers = ticked
    .filter((path) => !known.has(path))
    .map((path) => path.slice('equipment.'.length))
    .map((value): Option => ({ value, words: value }))
  const quoted = rowsOf(sheet.answers, 'quoted').length
  const holds = [
    ticked.length > 0 ? `${ticked.length} kinds ticked` : '',
    quoted > 0 ? `${quoted} from quotes` : '',
    sheet.answers.machines ? 'machines as JSON' : '',
  ]
    .filter(Boolean)
    .join(', ')
  return (
    <GroupFold
      sheet={sheet}
      paths={['equipment.', 'quoted.', 'machines']}
      id="equipment"
      title="Equipment"
      empty="every kind that fits the way the food passes is compared"
      holds={holds}
    >
      <p class="lead-in">
        With none ticked and none quoted, every kind that fits the way the food passes is compared. These are
        kinds of machine, not any maker's. With a quoted machine, tick the kinds to hold it against.
      </p>
      <ListError sheet={sheet} list="equipment" />
      <div class="ticks">
        {[...sheet.machines, ...strangers].map(({ value, words }) => (
          <label>
            <input
              type="checkbox"
              name={`equipment.${value}`}
              value="on"
              {...(ticked.includes(`equipment.${value}`) ? { checked: true } : {})}
            />
            <span>{words}</span>
          </label>
        ))}
      </div>
      <NoteLine path="equipment" note={sheet.notes.get('equipment')} />
      <QuotedMachines sheet={sheet} />
      <MachinesAsJson sheet={sheet} />
    </GroupFold>
  )
}

function MachinesAsJson({ sheet }: { sheet: Sheet }) {
  const typed = sheet.answers.machines ?? ''
  const wrong = sheet.problems.get('machines')
  return (
    <details class="fold" {...(typed || wrong ? { open: true } : {})}>
      <summary>Machines of other families, as JSON (optional)</summary>
      <div class={`field wide${wrong ? ' wrong' : ''}`}>
        <label for="machines">{labelOf('machines')}</label>
        <p class="hint" id="hint-machines">
          {hintOf('machines') ||
            'One object or a list, e.g. {"id": "fine-sieve", "family": "sieve", "meshMm": 2}.'}
        </p>
        <ListError sheet={sheet} list="machines" />
        <textarea
          id="machines"
          name="machines"
          rows={5}
          spellcheck={false}
          aria-describedby={`hint-machines${wrong ? ' error-machines' : ''}`}
          {...(wrong ? { 'aria-invalid': 'true' as const } : {})}
        >
          {typed}
        </textarea>
      </div>
    </details>
  )
}
