interface Props {
  readonly path: string
  /** Id of the form the box belongs to. */
  readonly form: string
  readonly label: string
  readonly hint: string
  readonly unit: string
  readonly typed: string
  readonly wrong: string | undefined
}

/** A number to enter, with what is wrong with it beside it. */
export function CostBox({ path, form, label, hint, unit, typed, wrong }: Props) {
  const described = [`hint-${path}`, ...(wrong ? [`error-${path}`] : [])].join(' ')
  return (
    <div class={`field${wrong ? ' wrong' : ''}`}>
      <label for={path}>{label}</label>
      <p class="hint" id={`hint-${path}`}>
        {hint}
      </p>
      {wrong ? (
        <p class="error" id={`error-${path}`}>
          <span class="unseen">Error: </span>
          {wrong}
        </p>
      ) : null}
      <span class="measure">
        <input
          type="text"
          inputmode="decimal"
          autocomplete="off"
          id={path}
          name={path}
          form={form}
          value={typed}
          aria-describedby={described}
          {...(wrong ? { 'aria-invalid': 'true' as const } : {})}
        />
        {unit ? <span class="unit">{unit}</span> : null}
      </span>
    </div>
  )
}
