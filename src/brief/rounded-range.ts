/** A range as it is shown: three significant digits. */
export function rounded(range: readonly [number, number] | null): readonly [number, number] | null {
  return range && [Number(range[0].toPrecision(3)), Number(range[1].toPrecision(3))]
}
