import { add, complex, magnitude, multiply, phaseDeg } from '../../numerics/complex.ts'
import { metals } from '../../reference/electrical.ts'
import type { Background } from '../assessment.ts'
import { targetMetal } from '../piece/piece.ts'
import { spherePolarizability } from '../piece/sphere.ts'
import type { Hearing } from '../scene.ts'

const BALL_RADIUS_M = 0.5e-3

/** |α| of a 1 mm ball of mild steel, m³: the yardstick of the signals around it. */
export function steelBallM3(frequencyHz: number): number {
  return magnitude(spherePolarizability(BALL_RADIUS_M, targetMetal(metals.get('steel')!), frequencyHz))
}

/** Food and pack at each frequency in use, beside a 1 mm ball of mild steel. */
export function backgroundOf(hearing: Hearing): readonly Background[] {
  return hearing.frequenciesHz.map((frequencyHz, k) => {
    const ball = steelBallM3(frequencyHz)
    const product = hearing.product?.[k] ?? null
    const layers = hearing.layers[k]!.reduce((sum, { alpha }) => add(sum, alpha), complex(0))
    const once = hearing.layers[k]!.reduce((all, { inside }) => multiply(all, inside), complex(1))
    const productM3 = product ? magnitude(product) : 0
    return {
      frequencyKHz: frequencyHz / 1000,
      productM3,
      productPhaseDeg: product ? phaseDeg(product) : null,
      productOverSteelBall: productM3 / ball,
      layersM3: magnitude(layers),
      layersOverSteelBall: magnitude(layers) / ball,
      insideShare: magnitude(once) ** 2,
    }
  })
}
