import { parseBrief } from '../../src/brief/index.ts'
import type { BriefInput, ContaminantInput } from '../../src/contract/brief.ts'
import type { XrayMachine } from '../../src/contract/index.ts'
import { archetypes, figuresOf } from '../../src/reference/index.ts'
import { buildOf } from '../../src/xray/beam/exposure.ts'
import { settingAt } from '../../src/xray/beam/settings.ts'
import { IDEAL } from '../../src/xray/observer/practice.ts'
import { CHANCE_HALF, objectIn, setScene, sizeAt } from '../../src/xray/observer/scene.ts'
import { materialAttenuation, packInBeam } from '../../src/xray/places/pack-in-beam.ts'
import { type Curves, chanceCurves, halfSizeMm, type Trial } from './simulated-chance.ts'

/** A comparison of the computed with the simulated chance of finding, described by a person. */
export interface Opinion {
  readonly name: string
  readonly food: string
  readonly heightMm: number
  readonly machine: 'xray-single' | 'xray-dual' | 'xray-dual-fine'
  readonly kV: number
  readonly piece: ContaminantInput
  readonly packs: number
  /** Sizes tried, as multiples of the computed half size. */
  readonly factors?: readonly number[]
  readonly withoutReading?: boolean
  /** Distance of the pieces, mm; wider where a crowd of pieces would count as noise. */
  readonly spacingMm?: number
}

export interface Answer {
  readonly opinion: Opinion
  readonly curves: Curves
  /** Sizes found with a chance of one half, mm. */
  readonly computedMm: number
  readonly knownMm: number
  readonly readMm: number
}

const FACTORS = [0.7, 0.8, 0.9, 1, 1.1, 1.25, 1.45]
const SPACING_MM = 20

function machineOf(id: string): XrayMachine {
  const figures = figuresOf(archetypes.get(id)!)
  return figures as XrayMachine
}

/** Works out one comparison; the same seed gives the same numbers. */
export function answerOf(opinion: Opinion, seed: number): Answer {
  const brief: BriefInput = {
    product: { food: opinion.food },
    points: [
      {
        stage: 'packed',
        heightMm: opinion.heightMm,
        widthMm: 180,
        lengthMm: 220,
        speedMPerMin: 20,
        parts: [{ material: 'pe', mm: 0.06, place: 'wrap' }],
        falseRejectsPerPack: 0.001,
      },
    ],
    contaminants: [opinion.piece],
    equipment: [opinion.machine],
  }
  const parsed = parseBrief(brief)
  if (!parsed.ok) throw new Error(parsed.problems.map((p) => `${p.path}: ${p.message}`).join('; '))
  const point = parsed.brief.points[0]!
  const contaminant = parsed.brief.contaminants[0]!
  const machine = machineOf(opinion.machine)
  const build = buildOf(machine)
  const setting = settingAt(machine, build, opinion.kV, point.speedMPerMin)
  const scene = setScene(build, point, packInBeam(point, build), setting, IDEAL)
  const object = objectIn(scene, contaminant, materialAttenuation(contaminant.material))
  const computedMm = sizeAt(scene, object, CHANCE_HALF)
  if (computedMm === null) throw new Error(`${opinion.name}: nothing to compare, the computed size is null`)
  const trial: Trial = {
    machine,
    point,
    setting,
    contaminant,
    packs: opinion.packs,
    seed,
    noise: point.product.grainMm > 0 ? 'clean packs' : 'model',
    spacingMm: opinion.spacingMm ?? SPACING_MM,
    ...(opinion.withoutReading ? { withoutReading: true } : {}),
  }
  const curves = chanceCurves(
    trial,
    (opinion.factors ?? FACTORS).map((f) => f * computedMm),
  )
  return {
    opinion,
    curves,
    computedMm,
    knownMm: halfSizeMm(curves.sizesMm, curves.known, curves.pieces),
    readMm: opinion.withoutReading ? Number.NaN : halfSizeMm(curves.sizesMm, curves.read, curves.pieces),
  }
}
