import type { Brief, XrayMachine } from '../contract/index.ts'
import { materials } from '../reference/index.ts'
import { BIN_COUNT, binKeV, binsBelow } from '../xray/beam/energy-bins.ts'
import { buildOf, filteredSpectrum } from '../xray/beam/exposure.ts'
import { packExponent } from '../xray/detector/channels.ts'
import { foodAttenuation, materialAttenuation, packInBeam } from '../xray/places/pack-in-beam.ts'

/** How strongly one thing stops x-rays, 1/cm, at each energy of the picture. */
export interface AttenuationCurve {
  readonly kind: 'food' | 'piece' | 'pack'
  readonly label: string
  readonly muPerCm: readonly number[]
}

/** What a tube sends, and what of it comes through food and pack. */
export interface TubeSpectrum {
  readonly machine: string
  readonly label: string
  readonly kV: number
  /** Photons per energy before and behind the pack, both as a share of the highest that is sent. */
  readonly sent: readonly number[]
  readonly through: readonly number[]
  readonly meanSentKeV: number
  readonly meanThroughKeV: number
  /** Share of the photons that come through. */
  readonly passing: number
}

export interface Spectra {
  /** Centres of the energy bins of every curve, keV. */
  readonly energiesKeV: readonly number[]
  readonly curves: readonly AttenuationCurve[]
  readonly tubes: readonly TubeSpectrum[]
}

/** The part of the pack that stops most in the beam at 60 keV, where it stops at least a hundredth of it. */
const AT_KEV = 60
const WORTH_DRAWING = 0.01

/**
 * Attenuation of food, piece and pack against energy, and the spectra of x-ray machines before and behind the pack.
 * @param machines those drawn, each at the tube voltage (kV) the advice gives it
 */
export function spectraOf(
  brief: Brief,
  pointIndex: number,
  contaminantIndex: number,
  machines: readonly { readonly machine: XrayMachine; readonly kV: number }[],
): Spectra | null {
  if (machines.length === 0) return null
  const point = brief.points[pointIndex]!
  const piece = brief.contaminants[contaminantIndex]!.material
  const bins = binsBelow(Math.max(...machines.map(({ kV }) => kV)))
  const perCm = (muPerMm: Float64Array) => Array.from(muPerMm.subarray(0, bins), (mu) => mu * 10)
  const nameOf = (id: string) => materials.get(id)?.label ?? id
  const at = Math.min(BIN_COUNT - 1, Math.max(0, AT_KEV - Math.floor(binKeV(0))))
  const [stops] = point.parts
    .map((part) => ({ part, exponent: materialAttenuation(part.material)[at]! * part.mm }))
    .filter(({ exponent }) => exponent >= WORTH_DRAWING)
    .sort((a, b) => b.exponent - a.exponent)
  return {
    energiesKeV: Array.from({ length: bins }, (_, i) => binKeV(i)),
    curves: [
      {
        kind: 'food',
        label: materials.get(point.product.food)?.label ?? 'the food',
        muPerCm: perCm(foodAttenuation(point)),
      },
      { kind: 'piece', label: nameOf(piece), muPerCm: perCm(materialAttenuation(piece)) },
      ...(stops
        ? [
            {
              kind: 'pack' as const,
              label: nameOf(stops.part.material),
              muPerCm: perCm(materialAttenuation(stops.part.material)),
            },
          ]
        : []),
    ],
    tubes: machines.map(({ machine, kV }) => {
      const build = buildOf(machine)
      const sent = filteredSpectrum(build, kV)
      const exponent = packExponent(packInBeam(point, build), BIN_COUNT)
      const through = sent.map((photons, i) => photons * Math.exp(-exponent[i]!))
      const total = (photons: Float64Array) => photons.reduce((sum, one) => sum + one, 0)
      const mean = (photons: Float64Array) =>
        photons.reduce((sum, one, i) => sum + one * binKeV(i), 0) / total(photons)
      const most = Math.max(...sent)
      const shares = (photons: Float64Array) =>
        Array.from(photons.subarray(0, bins), (one) => (most > 0 ? one / most : 0))
      return {
        machine: machine.id,
        label: machine.label ?? machine.id,
        kV,
        sent: shares(sent),
        through: shares(through),
        meanSentKeV: mean(sent),
        meanThroughKeV: mean(through),
        passing: total(through) / total(sent),
      }
    }),
  }
}
