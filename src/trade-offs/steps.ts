/** Values a person reads: three digits. */
const shown = (value: number): number => Number(value.toPrecision(3))

/**
 * Values from one end of a range to the other, equal steps on its scale, the present value among them in the
 * place of the one nearest to it. Ascending, no value twice; `count` at least 2.
 */
export function stepsBetween(
  [from, to]: readonly [number, number],
  scale: 'log' | 'linear',
  count: number,
  present: number | null,
): number[] {
  const at = (share: number) => (scale === 'log' ? from * (to / from) ** share : from + (to - from) * share)
  const values = Array.from({ length: count }, (_, i) => shown(at(i / (count - 1))))
  if (present !== null && present >= from && present <= to) {
    const far = (value: number) =>
      scale === 'log' ? Math.abs(Math.log(value / present)) : Math.abs(value - present)
    const nearest = values.reduce((near, value, i) => (far(value) < far(values[near]!) ? i : near), 0)
    values[nearest] = present
  }
  return [...new Set(values)].sort((a, b) => a - b)
}
