import { grainNoisePower, unevennessNoisePower } from '../../noise/texture.ts'
import { randomStream } from '../food/random.ts'
import { addField, type RandomField, randomFields } from '../food/random-field.ts'
import { type Raster, rasterOver } from '../food/raster.ts'
import type { DrawnPack } from './drawn-pack.ts'
import type { ExposedPack } from './exposed-pack.ts'

/** Surfaces with the noise power of the food's own pattern, one per channel; kept with the pack. */
function patternsOf(pack: DrawnPack, count: number): readonly RandomField[] {
  const { packing, grainMm, unevennessMm } = pack.point.product
  const { leftMm, topMm, widthMm, heightMm } = pack.frame
  const area = rasterOver(leftMm, topMm, widthMm + 2, heightMm + 2, 1)
  const power = (f: number) =>
    (grainMm > 0 ? grainNoisePower(f, grainMm, packing, pack.view.depthMm) : 0) +
    packing ** 2 * unevennessNoisePower(f, unevennessMm)
  while (pack.residuals.length < count) {
    const stream = randomStream(pack.seed, `composition ${pack.residuals.length}`)
    pack.residuals.push(...randomFields(area, power, stream))
  }
  return pack.residuals
}

/**
 * Adds what does not cancel between energies because the food's composition varies: in every channel a pattern
 * of its own with power (κ·t)²·T, T the noise power of the food's path and t its mean attenuation in the
 * channel. Put in at the pixels (its power lies far below their band), in proportion to the food in the beam.
 */
export function addCompositionResidual(
  channels: readonly Float32Array[],
  pixels: Raster,
  pack: DrawnPack,
  exposed: ExposedPack,
  residual: number,
): void {
  if (residual === 0 || channels.length < 2) return
  const patterns = patternsOf(pack, channels.length)
  const last = channels.at(-1)!
  const usual = middle(last)
  const share = last.map((g) => Math.min(1, Math.max(0, g / usual)))
  channels.forEach((channel, c) => {
    const pattern = new Float32Array(channel.length)
    addField(pattern, pixels, patterns[c]!, residual * exposed.channels.foodMu[c]!)
    for (let i = 0; i < channel.length; i++) channel[i]! += share[i]! * pattern[i]!
  })
}

function middle(values: Float32Array): number {
  const step = Math.max(1, Math.floor(values.length / 2000))
  const sample = Float64Array.from({ length: Math.ceil(values.length / step) }, (_, i) => values[i * step]!)
  return Math.max(sample.sort()[sample.length >> 1]!, 1e-6)
}
