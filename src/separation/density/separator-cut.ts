import { normalChance } from '../../numerics/normal.ts'

/** Which pieces a stream takes out: those faster than the food, those slower, or either. */
export type Side = 'heavy' | 'light' | 'either'

/**
 * Share of pieces of one speed v that leave the food in a stream set for a velocity ratio r, its edges
 * blurred by the unevenness s of the stream: heavy Φ(ln(v/(r·v_food))/s), light Φ(−ln(r·v/v_food)/s).
 * Speeds m/s, v_food > 0; v ≤ 0 (it floats up) is light. Log-normal edge: assumption (`separator-practice`).
 */
export function leavesShare(
  speed: number,
  foodSpeed: number,
  ratio: number,
  blur: number,
  side: Side,
): number {
  if (speed <= 0) return side === 'heavy' ? 0 : 1
  const x = Math.log(speed / foodSpeed)
  const edge = Math.log(ratio)
  const heavy = normalChance((x - edge) / blur)
  const light = normalChance((-x - edge) / blur)
  switch (side) {
    case 'heavy':
      return heavy
    case 'light':
      return light
    case 'either':
      return Math.min(1, heavy + light)
  }
}
