import type { Part, Point } from '../../contract/index.ts'
import { productFractions } from '../../food/fractions.ts'
import { materials } from '../../reference/index.ts'
import { linearAttenuation } from '../beam/energy-bins.ts'
import type { XrayBuild } from '../beam/exposure.ts'
import type { CrossedPart, PackInBeam } from '../detector/channels.ts'
import { crossings } from './crossings.ts'

/** Material a conveyor belt is taken to be made of. */
export const BELT_MATERIAL = 'polyurethane'

const kept = new Map<string, Float64Array>()

/** μ of a listed material on the energy bins, 1/mm, at its listed density or the one given (g/cm³). */
export function materialAttenuation(id: string, densityGPerCm3?: number): Float64Array {
  const material = materials.get(id)
  if (!material) throw new RangeError(`no such material: ${id}`)
  if (densityGPerCm3 !== undefined) return linearAttenuation(material.massFractions, densityGPerCm3)
  let mu = kept.get(id)
  if (!mu) {
    mu = linearAttenuation(material.massFractions, material.densityGPerCm3)
    kept.set(id, mu)
  }
  return mu
}

/** μ of the solid food of a point on the energy bins, 1/mm. */
export function foodAttenuation(point: Point): Float64Array {
  return linearAttenuation(productFractions(point.product), point.product.densityGPerCm3)
}

/** A part as a ray meets it: so many layers, each `slant` times as long as straight through. */
export function crossed(part: Part, layers: number, slant = 1): CrossedPart {
  return {
    muPerMm: materialAttenuation(part.material),
    mm: part.mm * slant,
    crossings: layers,
    unevennessMm: (part.unevennessMm ?? 0) * slant,
  }
}

/**
 * A plate that a beam at this angle to its plane (radians) crosses once: longer by 1 ÷ sin, with the unevenness it
 * has straight through. Stretched like the way, 0.3 mm would put 6 mm of glass at the base of a jar, where machines
 * with a tilted view are commonly specified at 2 to 3 mm (common practice, no source); here it comes out at about 4.
 */
export function crossedAslant(part: Part, angle: number): CrossedPart {
  return { ...crossed(part, 1), mm: part.mm / Math.sin(angle) }
}

function crossedParts(parts: readonly Part[], build: XrayBuild): CrossedPart[] {
  const all = parts.flatMap((part) => {
    const n = crossings(build.beam, part.place)
    return n === 0 || part.mm === 0 ? [] : [crossed(part, n)]
  })
  if (build.beltMm > 0 && build.beam === 'down') {
    all.push({
      muPerMm: materialAttenuation(BELT_MATERIAL),
      mm: build.beltMm,
      crossings: 1,
      unevennessMm: 0,
    })
  }
  return all
}

/** Food in the beam, mm: the height it fills for a down beam, its width for a side beam. */
export function beamPathMm(point: Point, beam: 'down' | 'side'): number {
  return beam === 'down' ? point.filledMm : point.widthMm
}

/** Food, packaging and belt of an inspection point as a machine's beam meets them (mid-pack). */
export function packInBeam(point: Point, build: XrayBuild): PackInBeam {
  return {
    solidMuPerMm: foodAttenuation(point),
    pathMm: beamPathMm(point, build.beam),
    packing: point.product.packing,
    grainMm: point.product.grainMm,
    unevennessMm: point.product.unevennessMm,
    parts: crossedParts(point.parts, build),
  }
}

/** Area of a pack as the beam sees it, mm²: length × width from above (π/4 of it for a standing cylinder), length × height from the side. */
export function projectedAreaMm2(point: Point, beam: 'down' | 'side'): number {
  if (beam === 'side') return point.lengthMm * point.filledMm
  return point.lengthMm * point.widthMm * (point.outline === 'cylinder' ? Math.PI / 4 : 1)
}
