import { readFileSync } from 'node:fs'
import { assessCoil } from '../../../src/coil/assess-coil.ts'
import { COIL_PARAMETERS, type CoilParameters } from '../../../src/coil/parameters.ts'
import { type CoilMachine, machineSchema } from '../../../src/contract/index.ts'
import { archetypes, figuresOf } from '../../../src/reference/index.ts'
import { sampleContaminant, samplePoint } from '../../coil/sample-point.ts'

/** A usual setting of the trade: the food in its opening or pipe, and the test pieces a line is set to. */
export interface UsualSetting {
  readonly name: string
  readonly use: 'set' | 'check'
  readonly several?: true
  readonly pipeMm?: number
  readonly pack?: readonly [height: number, width: number, length: number]
  readonly opening?: readonly [height: number, width: number]
  readonly sPerM: number
  readonly ironMm: number
  readonly brassMm: number
  readonly ss316Mm: number
}

export const usualSettings = (
  JSON.parse(readFileSync(new URL('./usual-settings.json', import.meta.url), 'utf8')) as {
    settings: UsualSetting[]
  }
).settings

export const TEST_METALS = ['steel', 'brass', 'ss316'] as const

const machineOf = (id: string) => machineSchema.parse(figuresOf(archetypes.get(id)!)) as CoilMachine

/**
 * What the model makes of a usual setting: expected sizes of the three test metals, mm, and the
 * frequencies, kHz. A line is set for stainless first: no metal may come out larger than the usual size of 316.
 */
export function predictSetting(
  setting: UsualSetting,
  parameters: CoilParameters = COIL_PARAMETERS,
): {
  readonly usualMm: readonly number[]
  readonly expectedMm: readonly (number | null)[]
  readonly frequenciesKHz: readonly number[]
} {
  const usualMm = [setting.ironMm, setting.brassMm, setting.ss316Mm]
  const { pipeMm, pack = [0, 0, 0], opening = [0, 0] } = setting
  const machine = machineOf(
    `coil-${pipeMm ? 'pipe' : 'single'}`.replace('single', setting.several ? 'multi' : 'single'),
  )
  const used = pipeMm && setting.several ? machineOf('coil-pipe-multi') : machine
  const point = pipeMm
    ? samplePoint(
        {
          stage: 'pumped',
          pipeDiameterMm: pipeMm,
          heightMm: pipeMm,
          widthMm: pipeMm,
          lengthMm: 300,
          apertureHeightMm: null,
          apertureWidthMm: null,
        },
        { conductivitySPerM: setting.sPerM },
      )
    : samplePoint(
        {
          heightMm: pack[0],
          widthMm: pack[1],
          lengthMm: pack[2],
          apertureHeightMm: opening[0],
          apertureWidthMm: opening[1],
        },
        { conductivitySPerM: setting.sPerM },
      )
  const at = (machine: CoilMachine) =>
    assessCoil({
      machine,
      point,
      contaminants: TEST_METALS.map((metal) => sampleContaminant(metal, { mustFindMm: setting.ss316Mm })),
      parameters,
      ...(machine.mostAtOnce ? { mostAtOnce: machine.mostAtOnce } : {}),
    })
  const { findings, frequenciesKHz } = at(used)
  return { usualMm, expectedMm: findings.map(({ expectedMm }) => expectedMm), frequenciesKHz }
}
