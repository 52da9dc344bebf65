import type { Option } from '../brief/sheet.ts'
import { CONFIDENCE_CHOICES, type PlanPageProps, POWER_CHOICES } from './props.ts'

const percent = (chance: string): Option => ({ value: chance, words: `${Number(chance) * 100} %` })

/** What the trial is to show; its answer is a link that can be kept. */
export function PlanForm({ packed, typed, problems, contaminants, machines }: PlanPageProps) {
  const choose = (name: keyof typeof typed, label: string, options: readonly Option[]) => (
    <div class={`field${problems.has(name) ? ' wrong' : ''}`}>
      <label for={name}>{label}</label>
      <select id={name} name={name}>
        {options.map(({ value, words }) => (
          <option value={value} selected={value === typed[name]}>
            {words}
          </option>
        ))}
      </select>
    </div>
  )
  return (
    <form method="get" action="/plan" class="sheet">
      <input type="hidden" name="b" value={packed} />
      <fieldset class="group">
        <legend>
          <h2>What it is to show</h2>
        </legend>
        <div class="fields">
          {choose('contaminant', 'Piece', contaminants)}
          <div class={`field${problems.has('size') ? ' wrong' : ''}`}>
            <label for="size">Size to show</label>
            <p class="hint" id="hint-size">
              Empty: the size you must find.
            </p>
            <span class="measure">
              <input
                type="text"
                inputmode="decimal"
                autocomplete="off"
                id="size"
                name="size"
                value={typed.size}
                aria-describedby="hint-size"
              />
              <span class="unit">mm</span>
            </span>
          </div>
          {choose('machine', 'Machine', machines)}
          {choose('confidence', 'How sure', CONFIDENCE_CHOICES.map(percent))}
          {choose('power', 'Chance that the trial shows it, at least', POWER_CHOICES.map(percent))}
        </div>
      </fieldset>
      <button type="submit">Plan the trial</button>
    </form>
  )
}
