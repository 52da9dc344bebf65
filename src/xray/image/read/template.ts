import type { Contaminant } from '../../../contract/index.ts'
import { modulationTransfer } from '../../noise/noise.ts'
import { objectTransform } from '../../observer/object-transform.ts'
import { displacedFood, firstChannelMu } from '../../observer/scene.ts'
import { type SeenObject, seeObject } from '../../observer/seen-object.ts'
import { materialAttenuation } from '../../places/pack-in-beam.ts'
import type { ExposedPack } from '../pack/exposed-pack.ts'
import { type FoodCurve, slopeOf } from './cancel-food.ts'

/** A kind of thing to look for: one contaminant of the brief as the channels see it. */
export interface Kind {
  readonly contaminant: number
  readonly seen: SeenObject
  /** Inside and no denser than the food: a void looks the same, so nothing is looked for. */
  readonly looksLikeVoid: boolean
}

/** The brief's contaminants as a machine's channels see them; gatheredMm: length gathered along a wire. */
export function kindsOf(
  exposed: ExposedPack,
  contaminants: readonly Contaminant[],
  gatheredMm: number,
): Kind[] {
  const { channels, pack, point } = exposed
  return contaminants.map((c, contaminant) => {
    const mu = materialAttenuation(c.material)
    const food = displacedFood(pack, c.placement)
    const seen = seeObject(channels, mu, food, c.shape, c.lengthMm ?? 0, gatheredMm, c.faceMm2 ?? 0)
    const lighter = firstChannelMu(channels, mu) <= (channels.foodMu[0] ?? 0)
    return {
      contaminant,
      seen,
      looksLikeVoid: c.placement === 'inside' && lighter && !point.product.voidFree,
    }
  })
}

/**
 * The picture's transform of one thing of one size, without pixel and blur, in the channels of the read area
 * (food cancelled in all but the last). Round things depend on |f|; a wire on the frequency across it, times
 * the transform of the length that is gathered.
 */
export interface Template {
  readonly kind: number
  readonly sizeMm: number
  readonly angle: number
  readonly cosine: number
  readonly sine: number
  /** mm gathered along a wire; null for round things. */
  readonly alongMm: number | null
  readonly stepPerMm: number
  /** [channel][frequency step]; mm² for round things, mm for wires (times alongMm). */
  readonly table: readonly Float64Array[]
}

const TABLE_STEPS = 512

/** Transform of a kind at a size (and direction of a wire), tabulated up to a frequency in 1/mm. */
export function templateOf(
  exposed: ExposedPack,
  curve: FoodCurve,
  kind: Kind,
  sizeMm: number,
  angle: number,
  endPerMm: number,
): Template {
  const { channels } = exposed
  const stepPerMm = endPerMm / TABLE_STEPS
  const frequencies = Float64Array.from({ length: TABLE_STEPS + 2 }, (_, i) => Math.max(i, 1e-3) * stepPerMm)
  const values = objectTransform({ ...exposed.observer, frequencies }, kind.seen, sizeMm)
  const n = channels.count
  const table = channels.weights.map((_, c) =>
    frequencies.map((_, q) => {
      const own = values[q * n + c]!
      return c === n - 1 ? own : own - slopeOf(curve, c) * values[q * n + n - 1]!
    }),
  )
  const wire = kind.seen.shape === 'wire'
  const alongMm = wire ? Math.min(kind.seen.lengthMm, Math.max(kind.seen.gatheredMm, sizeMm)) : null
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)]
  return { kind: kind.contaminant, sizeMm, angle, cosine, sine, alongMm, stepPerMm, table }
}

/** A template's value in one channel at a frequency vector, 1/mm. */
export function templateAt(template: Template, channel: number, fu: number, fv: number): number {
  if (template.alongMm === null) return read(template, channel, Math.sqrt(fu * fu + fv * fv))
  return gatheredAt(template, fu, fv) * read(template, channel, acrossAt(template, fu, fv))
}

/** The same in all channels, into `values`. */
export function templatesAt(template: Template, fu: number, fv: number, values: Float64Array): void {
  const round = template.alongMm === null
  const f = round ? Math.sqrt(fu * fu + fv * fv) : acrossAt(template, fu, fv)
  const gathered = round ? 1 : gatheredAt(template, fu, fv)
  for (let c = 0; c < values.length; c++) values[c] = gathered * read(template, c, f)
}

/** Transform of the length that is gathered along a wire, mm. */
function gatheredAt({ alongMm, cosine, sine }: Template, fu: number, fv: number): number {
  const along = Math.PI * alongMm! * (fu * cosine + fv * sine)
  return alongMm! * (Math.abs(along) < 1e-9 ? 1 : Math.sin(along) / along)
}

/** Frequency across a wire, 1/mm. */
const acrossAt = ({ cosine, sine }: Template, fu: number, fv: number) => Math.abs(fv * cosine - fu * sine)

function read(template: Template, channel: number, f: number): number {
  const row = template.table[channel]!
  const at = Math.min(row.length - 1.001, f / template.stepPerMm)
  const low = at | 0
  return row[low]! + (at - low) * (row[low + 1]! - row[low]!)
}

/** Aperture along one axis with its share of the blur, at f in 1/mm. */
export function pixelTransfer(exposed: ExposedPack, f: number): number {
  return modulationTransfer(Math.abs(f), exposed.objectPixelMm, exposed.build.blurPixels)
}
