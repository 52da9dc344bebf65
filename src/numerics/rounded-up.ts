/**
 * A size in mm as a reader may rely on it: rounded up, to 0.1 mm (0.01 mm below 1 mm), so that no page, table or
 * sentence promises better than was computed, and all say the same figure.
 */
export function roundedUp(sizeMm: number): string {
  const places = sizeMm < 1 ? 2 : 1
  const step = 10 ** places
  return (Math.ceil(sizeMm * step - 1e-9) / step).toFixed(places)
}
