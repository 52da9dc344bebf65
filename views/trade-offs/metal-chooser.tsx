import type { MetalProps } from './metal-props.ts'

/** Which machine, which metal, and how the piece lies. */
export function MetalChooser({ packed, asked, choices, note }: MetalProps) {
  return (
    <form
      method="get"
      action="/trade-offs/metal-detector"
      class="trade-off-form"
      id="chooser"
      hx-get="/trade-offs/metal-detector/part"
      hx-trigger="change"
      hx-target="#trade-off"
      hx-swap="innerMorph"
      hx-sync="this:replace"
    >
      <input type="hidden" name="b" value={packed} />
      <div class="fields">
        <Choose
          name="point"
          label="Inspection point"
          options={choices.points.map((words, at) => ({ value: String(at), words }))}
          chosen={String(asked.point)}
        />
        <Choose
          name="machine"
          label="Machine"
          options={choices.machines.map(({ id, label }) => ({ value: id, words: label }))}
          chosen={asked.machine}
        />
        <Choose
          name="contaminant"
          label="Metal"
          options={choices.metals.map(({ index, words }) => ({ value: String(index), words }))}
          chosen={String(asked.contaminant)}
        />
        <div class="field">
          <label for="choose-angle">Angle of the piece to the travel</label>
          <p class="hint" id="hint-angle">
            In degrees: 0 along the travel, 90 across it.
          </p>
          <span class="measure">
            <input
              type="text"
              inputmode="decimal"
              autocomplete="off"
              id="choose-angle"
              name="angle"
              value={String(asked.angleDeg)}
              aria-describedby="hint-angle"
            />
            <span class="unit">°</span>
          </span>
        </div>
      </div>
      <p role="status" class="small">
        {note}
      </p>
      <p>
        <button type="submit">Draw</button>
      </p>
    </form>
  )
}

interface ChooseProps {
  readonly name: string
  readonly label: string
  readonly options: readonly { readonly value: string; readonly words: string }[]
  readonly chosen: string
}

function Choose({ name, label, options, chosen }: ChooseProps) {
  if (options.length === 0) return null
  return (
    <div class="field">
      <label for={`choose-${name}`}>{label}</label>
      <select id={`choose-${name}`} name={name}>
        {options.map(({ value, words }) => (
          <option value={value} {...(value === chosen ? { selected: true } : {})}>
            {words}
          </option>
        ))}
      </select>
    </div>
  )
}
