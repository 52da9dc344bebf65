import type { Part, Place } from '../../contract/index.ts'
import { add, type Complex, complex, multiply, scale } from '../../numerics/complex.ts'
import { conductingLayers, type MetalElectrical, metals } from '../../reference/electrical.ts'
import { sheetCoupling } from '../opening/geometry-factor.ts'
import { flakeInPlane } from '../piece/flake.ts'
import { rectanglePolarizability } from '../piece/sheet.ts'
import { type ClosedLayer, closedTube, magneticShell, thinShell } from './closed-wrap.ts'

export type LayerKind = 'two faces' | 'one sheet' | 'closed tube' | 'closed container'

/** A conducting part of the pack. */
export interface PackLayer {
  readonly part: Part
  readonly kind: LayerKind
  /** Sheet conductance, siemens: central and the most it may be. */
  readonly conductanceS: number
  readonly mostConductanceS: number
  /** A ferromagnetic part; its magnetisation is added. */
  readonly magnetic: MetalElectrical | null
  /** Metal on film: the sheet resistance is the uncertain figure. */
  readonly film: boolean
}

/** Extent of the pack inside the opening, m; the length as far as it is sensed. */
export interface PackExtent {
  readonly widthM: number
  readonly heightM: number
  readonly sensedLengthM: number
  readonly openingHeightM: number
}

const KINDS: Record<Place, LayerKind> = {
  wrap: 'two faces',
  sleeve: 'closed tube',
  wall: 'closed container',
  base: 'one sheet',
  lid: 'one sheet',
  closure: 'one sheet',
  tray: 'one sheet',
}

/** The parts that conduct: with a sheet resistance entered, a metal, or a metallised film. */
export function conductingParts(parts: readonly Part[]): readonly PackLayer[] {
  return parts.flatMap((part): PackLayer[] => {
    const metal = metals.get(part.material)
    const film = conductingLayers.get(part.material)
    const magnetic = metal?.magnetism === 'ferromagnetic' ? metal : null
    const layer = (conductanceS: number, mostConductanceS: number): PackLayer[] =>
      conductanceS > 0
        ? [{ part, kind: KINDS[part.place], conductanceS, mostConductanceS, magnetic, film: !metal }]
        : []
    if (part.sheetOhmPerSquare !== undefined) {
      return layer(1 / part.sheetOhmPerSquare, 1 / part.sheetOhmPerSquare)
    }
    if (metal) {
      const thicknessM = part.mm / 1000
      return layer(metal.conductivitySPerM * thicknessM, metal.conductivityRange[1] * thicknessM)
    }
    if (film) return layer(1 / film.sheetOhmPerSquare, 1 / film.sheetOhmRange[0])
    return []
  })
}

/**
 * What a conducting part adds to the signal and leaves of the field inside. Two faces or one sheet couple
 * through the vertical field at half the pack's height; a tube closes around the travel; a container is
 * taken as the sphere of equal volume. Magnetisation of steel: in the plane of a sheet, or of the shell.
 */
export function layerResponse(
  layer: PackLayer,
  conductanceS: number,
  pack: PackExtent,
  frequencyHz: number,
): ClosedLayer {
  const { widthM, heightM, sensedLengthM } = pack
  const thicknessM = layer.part.mm / 1000
  const open = complex(1)
  switch (layer.kind) {
    case 'two faces':
    case 'one sheet': {
      const sheets = layer.kind === 'two faces' ? 2 : 1
      const coupling = sheetCoupling(heightM / 2, pack.openingHeightM)
      let alpha = scale(
        rectanglePolarizability(widthM, sensedLengthM, conductanceS, frequencyHz),
        sheets * coupling,
      )
      if (layer.magnetic) {
        const inPlane = flakeInPlane(widthM * sensedLengthM, thicknessM, layer.magnetic, frequencyHz)
        alpha = add(alpha, scale(inPlane, sheets))
      }
      return { alpha, inside: open }
    }
    case 'closed tube': {
      const tube = closedTube(
        widthM * heightM,
        2 * (widthM + heightM),
        sensedLengthM,
        conductanceS,
        frequencyHz,
      )
      if (!layer.magnetic) return tube
      const area = 2 * (widthM + heightM) * sensedLengthM
      return { ...tube, alpha: add(tube.alpha, flakeInPlane(area, thicknessM, layer.magnetic, frequencyHz)) }
    }
    case 'closed container': {
      const radiusM = Math.cbrt((3 * widthM * heightM * sensedLengthM) / (4 * Math.PI))
      const shell = thinShell(radiusM, conductanceS, frequencyHz)
      if (!layer.magnetic) return shell
      const inner = Math.max(0, radiusM - thicknessM)
      const magnetised = magneticShell(inner, radiusM, layer.magnetic.relativePermeability)
      return {
        alpha: add(shell.alpha, magnetised.alpha),
        inside: multiply(shell.inside, magnetised.inside),
      }
    }
  }
}

/** T² of all closed layers together: a piece inside is lit and heard through each of them. */
export function insideFactor(layers: readonly ClosedLayer[]): Complex {
  const once = layers.reduce((product, layer) => multiply(product, layer.inside), complex(1))
  return multiply(once, once)
}
