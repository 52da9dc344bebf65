/**
 * Answers of several filters at several places: `into`[j·places + i] = Σ_q filters[j·points + q]·waves[i·apart·points + q]
 * over the first `used` of the points.
 * Two filters at two places at a time, so that what is read is used twice: both counts are even, see {@link evenly}.
 */
export function answersAlong(
  into: Float64Array,
  filters: Float64Array,
  count: number,
  waves: Float64Array,
  places: number,
  points: number,
): void {
  for (let j = 0; j < count; j += 2) {
    const a = j * points
    const b = a + points
    for (let i = 0; i < places; i += 2) {
      const c = i * points
      const d = c + points
      let ac = 0
      let ad = 0
      let bc = 0
      let bd = 0
      for (let q = 0; q < points; q++) {
        const first = filters[a + q]!
        const second = filters[b + q]!
        const here = waves[c + q]!
        const next = waves[d + q]!
        ac += first * here
        ad += first * next
        bc += second * here
        bd += second * next
      }
      const at = j * places + i
      into[at] = ac
      into[at + 1] = ad
      into[at + places] = bc
      into[at + places + 1] = bd
    }
  }
}

/** So many, or one more where that is odd. */
export const evenly = (count: number): number => count + (count % 2)
