import { COMPARE_FORM, type ComparePageProps } from './props.ts'

/** Which two or three are laid side by side. */
export function Picks({ comparison, packed }: ComparePageProps) {
  const { all, sides } = comparison
  return (
    <form id={COMPARE_FORM} class="picks" method="get" action="/compare">
      <input type="hidden" name="b" value={packed} />
      <fieldset class="sub">
        <legend>Side by side</legend>
        <p class="hint">Two or three; of more, the first three count.</p>
        <div class="ticks">
          {all.map(({ key, words }) => (
            <label>
              <input
                type="checkbox"
                name="x"
                value={key}
                {...(sides.some((side) => side.key === key) ? { checked: true } : {})}
              />
              <span>{words}</span>
            </label>
          ))}
        </div>
      </fieldset>
      <button type="submit">Compare</button>
    </form>
  )
}
