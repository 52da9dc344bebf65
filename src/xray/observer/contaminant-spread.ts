import { materials } from '../../reference/index.ts'
import { BIN_COUNT } from '../beam/energy-bins.ts'
import { materialAttenuation } from '../places/pack-in-beam.ts'

const BIN_OF_50_KEV = 41
const kept = new Map<string, readonly Float64Array[]>()

/** μ curves a material id may stand for, weakest first: its family, else the ends of its density range. */
function curvesOf(id: string): readonly Float64Array[] {
  let curves = kept.get(id)
  if (!curves) {
    const material = materials.get(id)
    if (!material) throw new RangeError(`no such material: ${id}`)
    if (material.family.length > 1) {
      curves = material.family
        .map((member) => materialAttenuation(member))
        .sort((a, b) => a[BIN_OF_50_KEV]! - b[BIN_OF_50_KEV]!)
    } else if (material.densityRange) {
      curves = material.densityRange.map((density) => materialAttenuation(id, density))
    } else curves = [materialAttenuation(id)]
    kept.set(id, curves)
  }
  return curves
}

/** Mixed curves by material and place: the ensemble asks for the same ones at every machine. */
const mixes = new Map<string, Map<number, Float64Array>>()

/**
 * μ of a contaminant at a place u (0 to 1) in its own spread, 1/mm on the energy bins: between the members of
 * its family (which glass, which bone, which rubber), or over its density range.
 */
export function spreadAttenuation(id: string, u: number): Float64Array {
  const curves = curvesOf(id)
  if (curves.length === 1) return curves[0]!
  const ofMaterial = mixes.get(id) ?? new Map<number, Float64Array>()
  mixes.set(id, ofMaterial)
  const mixed = ofMaterial.get(u) ?? mixedAt(curves, u)
  ofMaterial.set(u, mixed)
  return mixed
}

function mixedAt(curves: readonly Float64Array[], u: number): Float64Array {
  const position = u * (curves.length - 1)
  const i = Math.min(curves.length - 2, Math.floor(position))
  const share = position - i
  const low = curves[i]!
  const high = curves[i + 1]!
  const mixed = new Float64Array(BIN_COUNT)
  for (let b = 0; b < BIN_COUNT; b++) mixed[b] = low[b]! * (1 - share) + high[b]! * share
  return mixed
}
