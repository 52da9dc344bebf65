import { metals } from '../../reference/electrical.ts'
import { archetypes, materials } from '../../reference/index.ts'
import { figures, saturations } from '../../reference/separation.ts'
import type { RemovalMachine } from '../assessment.ts'
import { GRAVITY_M_PER_S2 } from '../physical-constants.ts'
import type { Trail } from '../trail.ts'
import { type PoleField, pullNPerM3 } from './magnetic-pull.ts'

export type MagnetMachine = Extract<RemovalMachine, { family: 'magnet' }>

/**
 * Fall of the field of a magnet that just carries a ball of mild steel, against its weight, at its reach:
 * the steepest k, 1/m, with pull(reach; k) = ρ·g. Null where not even the gentlest fall looked at
 * (k = 1/reach) carries the ball: the reach is then more than this flux density can do.
 */
export function decayFromReach(surfaceTesla: number, reachM: number): number | null {
  const steel = {
    susceptibility: metals.get('steel')!.relativePermeability - 1,
    saturationTesla: saturations.get('steel')!.saturationTesla,
  }
  const weight = materials.get('steel')!.densityGPerCm3 * 1000 * GRAVITY_M_PER_S2
  const carries = (decayPerM: number) =>
    pullNPerM3({ surfaceTesla, decayPerM }, reachM, steel, 1 / 3) >= weight
  let low = 1 / reachM
  if (!carries(low)) return null
  let high = 2 * low
  while (carries(high)) high *= 2
  for (let k = 0; k < 60; k++) {
    const middle = (low + high) / 2
    if (carries(middle)) low = middle
    else high = middle
  }
  return low
}

/** Field of a magnet with where its figures come from. */
export interface Magnet {
  readonly field: PoleField
  /** False: the reach given is more than the flux density at the surface can do. */
  readonly reachPossible: boolean
  readonly step: string
}

function decayFromPoles(surfaceStep: string, formula: string, trail: Trail) {
  const decayPerM = (Math.PI / figures['magnet-pole-pitch'].value) * 1000
  const step = trail.add('decay', {
    label: 'fall of the field',
    symbol: 'k',
    value: decayPerM,
    unit: '1/m',
    formula,
    inputs: [surfaceStep, trail.figure('magnet-pole-pitch')],
    sources: ['periodic-field'],
  })
  return { decayPerM, step }
}

/** The field of the machine; what it does not say comes from the archetype, the decay else from a pole pitch. */
export function magnetOf(machine: MagnetMachine, trail: Trail): Magnet {
  const usual = archetypes.get('magnet')
  const usualTesla = usual?.family === 'magnet' ? usual.surfaceTesla : 1
  const surfaceTesla = machine.surfaceTesla ?? usualTesla
  const surfaceStep = trail.add('surface-flux', {
    label: 'flux density at the surface',
    symbol: 'B₀',
    value: surfaceTesla,
    unit: 'T',
    formula: machine.surfaceTesla === undefined ? 'usual of the class' : 'given by the machine',
    sources: usual?.sources ?? [],
  })
  if (machine.reachMm === undefined) {
    const { decayPerM, step } = decayFromPoles(surfaceStep, 'π / p; |B| = B₀·exp(−k·z)', trail)
    return { field: { surfaceTesla, decayPerM }, reachPossible: true, step }
  }
  const reachStep = trail.add('reach', {
    label: 'reach',
    symbol: 'z_r',
    value: machine.reachMm,
    unit: 'mm',
    formula: 'given by the machine: farthest distance at which it carries a ball of mild steel',
    sources: [...(usual?.sources ?? []), 'magnet-reach'],
  })
  const decayPerM = decayFromReach(surfaceTesla, machine.reachMm / 1000)
  if (decayPerM === null) {
    const poles = decayFromPoles(surfaceStep, 'π / p, as the reach given is impossible', trail)
    return { field: { surfaceTesla, decayPerM: poles.decayPerM }, reachPossible: false, step: poles.step }
  }
  const step = trail.add('decay', {
    label: 'fall of the field',
    symbol: 'k',
    value: decayPerM,
    unit: '1/m',
    formula: 'χ_eff·k·B₀²·exp(−2k·z_r)/μ0 = ρ·g for mild steel; |B| = B₀·exp(−k·z)',
    inputs: [surfaceStep, reachStep],
    sources: ['periodic-field', 'sphere-force'],
  })
  return { field: { surfaceTesla, decayPerM }, reachPossible: true, step }
}
