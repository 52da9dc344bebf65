import { rawJson, rawRows } from './raw-files.ts'

/** Element tables: one entry per element, columns of numbers; an edge stays a repeated energy. */
export function buildAttenuation(): unknown {
  const elements: { symbol: string; z: number; energiesKeV: number[]; muRho: number[]; muEnRho: number[] }[] =
    []
  for (const [symbol, z, energy, mu, muEn] of rawRows('attenuation.csv')) {
    let last = elements.at(-1)
    if (last?.symbol !== symbol) {
      last = { symbol: symbol!, z: Number(z), energiesKeV: [], muRho: [], muEnRho: [] }
      elements.push(last)
    }
    last!.energiesKeV.push(Number(energy))
    last!.muRho.push(Number(mu))
    last!.muEnRho.push(Number(muEn))
  }
  return { source: 'xraylib', unit: 'keV, cm2/g', elements }
}

interface RawBremsstrahlung {
  readonly source: string
  readonly photonFraction: readonly number[]
  readonly rows: readonly { electronEnergyKeV: number; chiMb: readonly number[] }[]
  readonly kEdgeKeV: number
  readonly kLinesSource: string
  readonly kLines: readonly { line: string; energyKeV: number; share: number }[]
}

/** Scaled bremsstrahlung cross section of tungsten, mb, by electron energy and photon fraction; K lines. */
export function buildBremsstrahlung(): unknown {
  const raw = rawJson<RawBremsstrahlung>('tungsten-bremsstrahlung.json')
  return {
    source: raw.source,
    kLinesSource: raw.kLinesSource,
    electronEnergyKeV: raw.rows.map((row) => row.electronEnergyKeV),
    photonFraction: raw.photonFraction,
    chiMb: raw.rows.map((row) => row.chiMb),
    kLines: raw.kLines.map(({ energyKeV, share }) => ({ energyKeV, share })),
    kEdgeKeV: raw.kEdgeKeV,
  }
}

/** Noise power of a bed of equal spheres over frequency times grain size, at two packings. */
export function buildGranularTexture(): unknown {
  const rows = rawRows('granular-texture.csv').map((row) => row.map(Number))
  return {
    source: 'granular-simulation',
    fD: rows.map((row) => row[0]),
    g60: rows.map((row) => row[1]),
    g45: rows.map((row) => row[2]),
    packingHigh: 0.6,
    packingLow: 0.45,
  }
}
