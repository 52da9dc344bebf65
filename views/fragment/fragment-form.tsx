import type { OptionGroup } from '../brief/sheet.ts'
import { CHOICE_WORDS } from '../words/choices.ts'

/** What a person said of the piece, as typed. */
export interface FragmentAnswers {
  readonly material: string
  readonly shape: string
  readonly size: string
  readonly length: string
  readonly face: string
  readonly placement: string
}

interface Props {
  readonly answers: FragmentAnswers
  /** What is wrong, by field. */
  readonly problems: ReadonlyMap<string, string>
  readonly contaminants: readonly OptionGroup[]
  readonly packed: string
}

/** The piece: material, shape, size. Its answer is a link that can be kept. */
export function FragmentForm({ answers, problems, contaminants, packed }: Props) {
  const measure = (name: 'size' | 'length' | 'face', label: string, hint: string, unit: string) => (
    <div class={`field${problems.has(name) ? ' wrong' : ''}`}>
      <label for={name}>{label}</label>
      <p class="hint" id={`hint-${name}`}>
        {hint}
      </p>
      <Wrong name={name} problems={problems} />
      <span class="measure">
        <input
          type="text"
          inputmode="decimal"
          autocomplete="off"
          id={name}
          name={name}
          value={answers[name]}
          aria-describedby={`hint-${name}${problems.has(name) ? ` error-${name}` : ''}`}
          {...(problems.has(name) ? { 'aria-invalid': 'true' as const } : {})}
        />
        <span class="unit">{unit}</span>
      </span>
    </div>
  )
  const choose = (name: 'shape' | 'placement', label: string) => (
    <div class="field">
      <label for={name}>{label}</label>
      <select id={name} name={name}>
        {Object.entries(CHOICE_WORDS[name] ?? {}).map(([value, words]) => (
          <option value={value} selected={value === answers[name]}>
            {words}
          </option>
        ))}
      </select>
    </div>
  )
  return (
    <form method="get" action="/fragment" class="sheet">
      <input type="hidden" name="b" value={packed} />
      <fieldset class="group">
        <legend>
          <h2>The piece</h2>
        </legend>
        <div class="fields">
          <div class={`field${problems.has('material') ? ' wrong' : ''}`}>
            <label for="material">Material</label>
            <Wrong name="material" problems={problems} />
            <select
              id="material"
              name="material"
              {...(problems.has('material') ? { 'aria-describedby': 'error-material' } : {})}
            >
              <option value="">Choose the nearest</option>
              {contaminants.map((group) => (
                <optgroup label={group.words}>
                  {group.options.map(({ value, words }) => (
                    <option value={value} selected={value === answers.material}>
                      {words}
                    </option>
                  ))}
                </optgroup>
              ))}
            </select>
          </div>
          {choose('shape', 'Shape')}
          {measure('size', 'Size', 'Diameter of a chunk or wire; of a flake its thickness.', 'mm')}
          {measure('length', 'Length of a wire', 'Only for a wire.', 'mm')}
          {measure('face', 'Face of a flake', 'Area of its flat side; only for a flake.', 'mm²')}
          {choose('placement', 'Where it lay')}
        </div>
      </fieldset>
      <button type="submit">Would we have found it?</button>
    </form>
  )
}

function Wrong({ name, problems }: { name: string; problems: ReadonlyMap<string, string> }) {
  const message = problems.get(name)
  return message ? (
    <p class="error" id={`error-${name}`}>
      <span class="unseen">Error: </span>
      {message}
    </p>
  ) : null
}
