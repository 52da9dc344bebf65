import type { CoilMachine, Contaminant, Machine, Point } from '../contract/index.ts'
import { normalUpperQuantile } from '../numerics/normal.ts'
import type { CoilAssessment } from './assessment.ts'
import { findingOf } from './decide/finding.ts'
import { emptyOf, type FindingContext, spreadOf } from './decide/finding-context.ts'
import { fittingSizes } from './decide/fitting.ts'
import { frequencySubsets } from './decide/frequency-choice.ts'
import { searchFrequencies } from './decide/frequency-search.ts'
import { backgroundOf } from './food/background.ts'
import { fieldOpening } from './opening/opening.ts'
import { metalFreeZoneMm, packGap } from './opening/surroundings.ts'
import { layerSummary } from './pack/layer-summary.ts'
import { COIL_PARAMETERS, type CoilParameters, cautiousParameters } from './parameters.ts'
import { pieceOf } from './piece/piece.ts'
import { foodResidual, type Scene } from './scene.ts'
import { situationOf } from './situation.ts'
import { emptyFinding, reactsToStaticField } from './static-field.ts'
import { coilTrail } from './trail/trail.ts'

export type StaticFieldMachine = Extract<Machine, { family: 'static-field' }>

/** One metal detector at one inspection point. */
export interface CoilInput {
  readonly machine: CoilMachine | StaticFieldMachine
  readonly point: Point
  readonly contaminants: readonly Contaminant[]
  /** Most frequencies that `choose` may run together; all of them unless given. */
  readonly mostAtOnce?: number
  /** Begins every calculation id; "coil" unless given. */
  readonly idPrefix?: string
  readonly parameters?: CoilParameters
}

const toHz = (kHz: readonly number[]): number[] => kHz.map((f) => f * 1000)

function residualWords(scene: Scene, parameters: CoilParameters): CoilAssessment['residual'] {
  const { remainder, phaseRad } = foodResidual(scene, parameters)
  return { amplitudePct: 100 * remainder, phaseDeg: (180 / Math.PI) * phaseRad, read: scene.read !== null }
}

/**
 * Findable sizes of a balanced-coil metal detector at a point, with all that led to them. A refused pack
 * still gets its sizes: they say what the machine would find if the pack fitted.
 */
export function assessCoil(input: CoilInput): CoilAssessment {
  const { point, contaminants, parameters = COIL_PARAMETERS, idPrefix = 'coil' } = input
  const machine: CoilMachine =
    input.machine.family === 'coil'
      ? input.machine
      : { ...input.machine, family: 'coil', frequenciesKHz: [], arrangement: 'tunnel' }
  const situation = situationOf(machine, point)
  const { conductivity, sceneAt } = situation
  const scene = sceneAt(conductivity.valueSPerM, 'central')
  const thresholdZ = normalUpperQuantile(point.falseRejectsPerPack / parameters.looksPerPack)
  const together = machine.use === 'together' || machine.frequenciesKHz.length < 2
  const choicesKHz = together
    ? [machine.frequenciesKHz]
    : frequencySubsets(machine.frequenciesKHz, input.mostAtOnce ?? machine.frequenciesKHz.length)
  const context: FindingContext = {
    parameters,
    cautious: cautiousParameters(parameters),
    scene,
    conductive: sceneAt(conductivity.highSPerM, 'central'),
    worst: sceneAt(conductivity.highSPerM, 'most'),
    arrangement: situation.arrangement,
    opening: situation.opening,
    thresholdZ,
    limitMm: situation.limitMm,
    choices: choicesKHz.map(toHz),
  }
  const openingHeightMm = fieldOpening(situation.opening).heightM * 1000
  const layers = layerSummary(point, situation.arrangement)
  const base = {
    arrangement: situation.arrangement,
    refusals: situation.refusals,
    opening: situation.opening,
    conductivity,
    productSignal: scene.block !== null,
    residual: scene.block && residualWords(scene, parameters),
    susceptibility: situation.susceptibility,
    layers,
    filling: situation.filling,
    streamShare: situation.streamShare,
    metalFreeZone: metalFreeZoneMm(openingHeightMm),
    packGap: packGap(point, openingHeightMm),
    thresholdZ,
    spread: spreadOf(scene, parameters),
  }
  const idOf = (index: number) => `${idPrefix}.c${index}.expected`
  if (input.machine.family === 'static-field') {
    return {
      ...base,
      family: 'static-field',
      fitting: null,
      frequenciesKHz: [],
      frequencySteps: [],
      frequencyRunnerUp: null,
      background: [],
      findings: contaminants.map((contaminant, index) =>
        emptyFinding(index, reactsToStaticField(contaminant), situation.limitMm, ''),
      ),
      calculations: [],
    }
  }
  const pieces = contaminants.map(pieceOf)
  const mustFindMm = contaminants.map((contaminant) => contaminant.mustFindMm)
  const { chosen, listen, steps, runnerUp } = searchFrequencies(context, pieces, mustFindMm)
  const empty = emptyOf(context)
  const closed = layers.some(({ kind }) => kind === 'closed container')
  const findings = contaminants.map((contaminant, index) => {
    const piece = pieces[index]!
    if (closed && piece !== null && contaminant.placement === 'inside')
      return emptyFinding(index, false, situation.limitMm, '')
    return piece === null
      ? emptyFinding(index, false, situation.limitMm, '')
      : findingOf(context, contaminant, index, piece, listen, empty, idOf(index))
  })
  const fitting = fittingSizes(situation, point, context, pieces, toHz(chosen.frequenciesKHz))
  return {
    ...base,
    family: 'coil',
    fitting,
    frequenciesKHz: chosen.frequenciesKHz,
    frequencySteps: steps,
    frequencyRunnerUp: runnerUp,
    background: backgroundOf(listen.hearing),
    findings,
    calculations: coilTrail({ idPrefix, situation, scene, context, listen, pieces, findings }),
  }
}
