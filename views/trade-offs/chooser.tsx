import { INPUT_WORDS } from '../words/trade-offs.ts'
import type { TradeOffsProps } from './props.ts'

/** What to draw: a plain form that asks by address; with script it redraws as one chooses. */
export function Chooser({ packed, asked, choices, note }: TradeOffsProps) {
  return (
    <form
      method="get"
      action="/trade-offs"
      class="trade-off-form"
      id="chooser"
      hx-get="/trade-offs/part"
      hx-trigger="change"
      hx-target="#trade-off"
      hx-swap="innerMorph"
      hx-sync="this:replace"
    >
      <input type="hidden" name="b" value={packed} />
      <div class="fields">
        {choices.points.length > 1 ? (
          <Choose name="point" label="Inspection point" words={choices.points} chosen={asked.point} />
        ) : (
          <input type="hidden" name="point" value="0" />
        )}
        <Choose name="contaminant" label="Contaminant" words={choices.pieces} chosen={asked.contaminant} />
      </div>
      <fieldset class="radios">
        <legend>What to move</legend>
        <div class="ticks">
          {choices.inputs.map((id) => (
            <label>
              <input
                type="radio"
                id={`input-${id}`}
                name="input"
                value={id}
                {...(id === asked.input ? { checked: true } : {})}
              />
              <span>{INPUT_WORDS[id].name}</span>
            </label>
          ))}
        </div>
      </fieldset>
      <fieldset class="radios">
        <legend>Machines, at most {choices.mostMachines}</legend>
        <div class="ticks">
          {choices.machines.map(({ id, label }) => (
            <label>
              <input
                type="checkbox"
                id={`machine-${id}`}
                name="machines"
                value={id}
                {...(asked.machines.includes(id) ? { checked: true } : {})}
              />
              <span>{label}</span>
            </label>
          ))}
        </div>
      </fieldset>
      <p role="status" class="small">
        {note}
      </p>
      <p>
        <button type="submit">Draw</button>
      </p>
    </form>
  )
}

function Choose({
  name,
  label,
  words,
  chosen,
}: {
  name: string
  label: string
  words: readonly string[]
  chosen: number
}) {
  return (
    <div class="field">
      <label for={`choose-${name}`}>{label}</label>
      <select id={`choose-${name}`} name={name}>
        {words.map((text, at) => (
          <option value={String(at)} {...(at === chosen ? { selected: true } : {})}>
            {text}
          </option>
        ))}
      </select>
    </div>
  )
}
