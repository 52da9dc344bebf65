import type { Advice } from '../../src/contract/advice.ts'

/** Which program, rule book and reference data gave this answer, so that it can be had again. */
export function Versions({ advice }: { advice: Advice }) {
  const { gritwise, rules, reference } = advice.versions
  return (
    <p class="versions">
      gritwise {gritwise}, rule book {rules}, reference data {reference}. The whole brief is in the address of
      this page: kept as a bookmark, it gives this answer again with the same versions.
    </p>
  )
}
