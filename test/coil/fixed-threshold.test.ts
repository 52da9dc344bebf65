import { describe, expect, test } from 'vitest'
import { DetectionCurve } from '../../src/coil/decide/detection-curve.ts'
import { firstReachingMm } from '../../src/coil/decide/last-crossing.ts'
import { sensedLengthM } from '../../src/coil/food/product-block.ts'
import { conductingParts } from '../../src/coil/pack/packaging.ts'
import { COIL_PARAMETERS } from '../../src/coil/parameters.ts'
import { responseTable } from '../../src/coil/piece/response-table.ts'
import { hearing, type Scene } from '../../src/coil/scene.ts'
import type { Part } from '../../src/contract/index.ts'
import { fixture } from './sample-point.ts'

interface FixedThreshold {
  noiseM3: number
  threshold: number
  rows: [string, number, number[], Record<string, number>][]
}

const table = fixture<FixedThreshold>('fixed-threshold')
const { metals } = fixture<{ metals: Record<string, { sigma: number; mu_r: number }> }>('responses')
const parameters = { ...COIL_PARAMETERS, noiseM3: table.noiseM3 }

interface Setting {
  openingM: number
  frequenciesHz: number[]
  block?: {
    widthM: number
    heightM: number
    lengthM: number
    sPerM: number
    permittivity: number
    chi?: number
  }
  parts?: Part[]
}

function sizeMm(id: string, setting: Setting): number | null {
  const { openingM, frequenciesHz, parts = [] } = setting
  const block = setting.block ?? { widthM: 0.1, heightM: 0.03, lengthM: 0.15, sPerM: 0, permittivity: 0 }
  const scene: Scene = {
    flow: 'block',
    read: { amplitudePct: 1, phaseDeg: (0.0175 * 180) / Math.PI },
    wetness: 1,
    opening: { widthM: 2 * openingM, heightM: openingM },
    block: setting.block
      ? {
          widthM: block.widthM,
          heightM: block.heightM,
          lengthM: block.lengthM,
          conductivitySPerM: block.sPerM,
          relativePermittivity: block.permittivity,
          susceptibility: block.chi ?? 0,
          sideBySide: 1,
        }
      : null,
    pack: {
      widthM: block.widthM,
      heightM: block.heightM,
      sensedLengthM: sensedLengthM(block.lengthM, openingM),
      openingHeightM: openingM,
    },
    layers: conductingParts(parts),
    conductance: 'central',
  }
  const { whitening, inside } = hearing(scene, frequenciesHz, parameters)
  const { sigma, mu_r } = metals[id]!
  const metal = { conductivitySPerM: sigma, relativePermeability: mu_r, ferromagnetic: mu_r > 2 }
  const tables = frequenciesHz.map((f) => responseTable({ kind: 'sphere' }, 'along', metal, f))
  const target = { along: tables, across: tables, alongShare: 1, layer: inside, gain: 1 }
  return firstReachingMm(new DetectionCurve(whitening, target, 0, 0), table.threshold, 12)
}

const trio = (setting: Setting) => ['mildsteel', 'brass', 'ss316'].map((id) => sizeMm(id, setting))

const WET = { widthM: 0.1, heightM: 0.04, lengthM: 0.15, sPerM: 0.5, permittivity: 2000 }

describe('smallest size with D = 5', () => {
  // Source: computed independently on a 480-point grid.
  test('agrees with 360 independent values to 1e-3, dry and wet, one and several frequencies', () => {
    let compared = 0
    for (const [product, openingM, frequenciesHz, sizes] of table.rows) {
      const setting = { openingM, frequenciesHz, ...(product === 'dry' ? {} : { block: WET }) }
      for (const [id, sizeM] of Object.entries(sizes)) {
        expect(
          Math.abs(sizeMm(id, setting)! / (sizeM * 1000) - 1),
          `${product} ${openingM} ${id}`,
        ).toBeLessThan(1e-3)
        compared++
      }
    }
    expect(compared).toBe(360)
  })

  // Source of the rest: computed independently, printed to two decimals or two digits (tolerance 0.6 %).
  const near = (setting: Setting, expected: (number | null)[]) => {
    const own = trio(setting)
    expected.forEach((size, k) => {
      if (size === null) expect(own[k]).toBeNull()
      else expect(Math.abs(own[k]! / size - 1)).toBeLessThan(0.006)
    })
  }

  test('half-height blocks: wet at 50 kHz, frozen at 100 + 850 kHz', () => {
    const block = (h: number, sPerM: number, permittivity: number) => ({
      openingM: h,
      block: { widthM: h, heightM: h / 2, lengthM: 2 * h, sPerM, permittivity },
    })
    near({ ...block(0.15, 0.5, 2000), frequenciesHz: [50e3] }, [1.81, 2.9, 5.15])
    near({ ...block(0.3, 0.5, 2000), frequenciesHz: [50e3] }, [6.71, 7.42, 9.43])
    near({ ...block(0.2, 0.005, 10), frequenciesHz: [100e3, 850e3] }, [1.34, 1.85, 2.49])
    near({ ...block(0.4, 0.005, 10), frequenciesHz: [100e3, 850e3] }, [2.83, 3.61, 4.55])
  })

  test('conductivity scan at 300 kHz, 175 mm', () => {
    const at = (sPerM: number): Setting => ({
      openingM: 0.175,
      frequenciesHz: [300e3],
      block: { ...WET, sPerM, permittivity: 80 },
    })
    near(at(0.02), [0.97, 1.39, 2.14])
    near(at(1), [2.13, 2.54, 3.42])
    near(at(2), [2.85, 3.12, 3.94])
  })

  test('iron powder at 850 kHz: iron and brass lose, 316 hardly', () => {
    const at = (chi: number): Setting => ({
      openingM: 0.175,
      frequenciesHz: [850e3],
      block: { widthM: 0.1, heightM: 0.04, lengthM: 0.15, sPerM: 0.001, permittivity: 3, chi },
    })
    near(at(1e-6), [0.96, 1.13, 1.38])
    near(at(1e-5), [1.21, 1.38, 1.44])
    near(at(5e-5), [1.67, 2.42, 1.95])
  })

  test('a pouch with metallised faces, a metallised wrap and a foil lid', () => {
    const pouch = (part: Part, f: number): Setting => ({ openingM: 0.175, frequenciesHz: [f], parts: [part] })
    const film = (place: Part['place'], siemens: number): Part => ({
      material: 'metallised_film',
      mm: 0.03,
      place,
      sheetOhmPerSquare: 1 / siemens,
    })
    near(pouch(film('wrap', 0.42), 50e3), [1.18, 2.27, 4.34])
    near(pouch(film('wrap', 1.75), 100e3), [1.88, 2.67, 4.37])
    near(pouch(film('sleeve', 0.42), 100e3), [3.106, 3.864, 5.459])
    near(pouch({ material: 'aluminium_foil', mm: 0.007, place: 'lid' }, 100e3), [7.86, 9.94, null])
    near(pouch({ material: 'aluminium_foil', mm: 0.007, place: 'sleeve' }, 50e3), [null, null, null])
  })
})
