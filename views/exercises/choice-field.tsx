export type Choices = readonly { readonly value: string; readonly words: string }[]

/** A list to choose from, with its label; `within` keeps its id apart from those of other forms. */
export function ChoiceField(props: {
  within: string
  name: string
  label: string
  value: string
  choices: Choices
}) {
  const { within, name, label, value, choices } = props
  return (
    <div class="field">
      <label for={`${within}-${name}`}>{label}</label>
      <select id={`${within}-${name}`} name={name}>
        {choices.map((choice) => (
          <option value={choice.value} selected={choice.value === value}>
            {choice.words}
          </option>
        ))}
      </select>
    </div>
  )
}
