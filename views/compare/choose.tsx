import type { Comparison } from '../../src/compare/comparison.ts'
import { MOST_MACHINES_TWICE, MOST_SIDES } from '../../src/compare/pick-sides.ts'
import type { Side } from '../../src/compare/sides.ts'
import { CostBox } from './cost-box.tsx'
import { COMPARE_FORM, type ComparePageProps } from './props.ts'

/** Which machines stand side by side, and the one rate of false rejects that all figures of the page hold at. */
export function ChooseSides(props: ComparePageProps) {
  const { comparison, packed, packedOther, rejectsTyped } = props
  const wrong = comparison.problems.find(({ path }) => path === 'rejects')?.message
  const twice = comparison.laid.length === 2
  const offered = comparison.all.filter(({ laid }) => laid === comparison.laid[0])
  return (
    <form id={COMPARE_FORM} class="choose-sides" method="get" action="/compare">
      <input type="hidden" name="b" value={packed} />
      {packedOther === null ? null : <input type="hidden" name="with" value={packedOther} />}
      <CostBox
        path="rejects"
        form={COMPARE_FORM}
        label="False rejects, one rate for all"
        hint={rateHint(comparison)}
        unit=""
        typed={rejectsTyped}
        wrong={wrong}
      />
      <details class="which">
        <summary>
          Machines: {offered.filter((side) => isChosen(comparison, side)).length} of {offered.length}
        </summary>
        <fieldset class="sub">
          <legend class="unseen">Machines side by side</legend>
          <p class="hint">
            {twice
              ? `At most ${MOST_MACHINES_TWICE}, each with both packs.`
              : `Two or three; of more, the first ${MOST_SIDES} count.`}
          </p>
          <div class="ticks">
            {offered.map((side) => (
              <label>
                <input
                  type="checkbox"
                  name="x"
                  value={side.key}
                  {...(isChosen(comparison, side) ? { checked: true } : {})}
                />
                <span>{side.words.replace(/^A: /, '')}</span>
              </label>
            ))}
          </div>
        </fieldset>
      </details>
      <button type="submit">Compare</button>
    </form>
  )
}

/** Of two packs a machine counts as chosen where it stands with either. */
const isChosen = ({ sides, laid }: Comparison, { key, option, pointIndex }: Side) =>
  sides.some(
    (side) =>
      side.key === key ||
      (laid.length === 2 && side.option.equipment === option.equipment && side.pointIndex === pointIndex),
  )

function rateHint({ falseRejectsPerPack }: Comparison): string {
  return falseRejectsPerPack === null
    ? 'Like 1 in 1000. Blank: each inspection point keeps its own.'
    : 'Like 1 in 1000. Sizes, cost and clauses hold at it.'
}
