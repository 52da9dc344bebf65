import type { Advice } from '../../src/contract/advice.ts'

interface Props {
  readonly advice: Advice
  readonly packed: string
  /** Day of printing, e.g. "25 November 2026"; null on the screen. */
  readonly printedOn: string | null
}

/** Which program, rule book and reference data gave this answer, so that it can be had again. */
export function Versions({ advice, packed, printedOn }: Props) {
  const { gritwise, rules, reference } = advice.versions
  const versions = `gritwise ${gritwise}, rule book ${rules}, reference data ${reference}.`
  if (printedOn === null)
    return (
      <p class="versions">
        {versions} <a href={`/advice/difference?b=${packed}`}>Judge it by another rule book</a>. A bookmark of
        this page keeps the brief.
      </p>
    )
  return (
    <p class="versions">
      {versions} Printed on {printedOn}. The brief, for the address after /advice?b= :{' '}
      <span class="address">{packed}</span>
    </p>
  )
}
