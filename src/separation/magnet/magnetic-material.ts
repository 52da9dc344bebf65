import { metals } from '../../reference/electrical.ts'
import type { Material } from '../../reference/index.ts'
import { figures, saturations } from '../../reference/separation.ts'
import type { Trail } from '../trail.ts'
import type { Magnetism } from './magnetic-pull.ts'

/** The weakest and the strongest answer a material may give, and where that is written. */
export interface MagneticRange {
  readonly weakest: Magnetism
  readonly strongest: Magnetism
  readonly step: string
}

/** Materials whose cold work is counted: torn chips and drawn wire of grade 304. */
const COLD_WORKED = 'ss304'

const UNSATURATED = Number.POSITIVE_INFINITY

/**
 * How a material answers a magnet: ferromagnetic grades from their permeability, up to saturation; 304 from
 * annealed to strongly cold-worked; other austenitic grades as annealed; everything else not at all (null).
 */
export function magneticRange(material: Material, trail: Trail): MagneticRange | null {
  const row = metals.get(material.id)
  if (!row || row.magnetism === 'none') return null
  const id = `magnetism.${material.id}`
  const [least, most] = row.permeabilityRange
  if (row.magnetism === 'ferromagnetic') {
    const saturation = saturations.get(material.id)
    const inputs = saturation
      ? [
          trail.add(`${id}.saturation`, {
            label: `saturation of ${material.label}`,
            symbol: 'Bs',
            value: `${saturation.range[0]} to ${saturation.range[1]}`,
            unit: 'T',
            formula: saturation.note ? `listed; ${saturation.note}` : 'listed',
            sources: [saturation.source],
          }),
        ]
      : []
    return {
      weakest: {
        susceptibility: least - 1,
        saturationTesla: saturation?.range[0] ?? UNSATURATED,
      },
      strongest: {
        susceptibility: most - 1,
        saturationTesla: saturation?.range[1] ?? UNSATURATED,
      },
      step: trail.add(id, {
        label: `relative permeability of ${material.label}`,
        symbol: 'μr',
        value: `${least} to ${most}`,
        formula: 'listed',
        inputs,
        sources: row.sources,
      }),
    }
  }
  if (material.id === COLD_WORKED) {
    return {
      weakest: { susceptibility: least - 1, saturationTesla: UNSATURATED },
      strongest: {
        susceptibility: figures['cold-worked-permeability'].range[1] - 1,
        saturationTesla: figures['cold-worked-saturation'].range[1],
      },
      step: trail.add(id, {
        label: `relative permeability of ${material.label}, annealed to cold-worked`,
        symbol: 'μr',
        value: `${least} to ${figures['cold-worked-permeability'].range[1]}`,
        formula: 'listed',
        inputs: [trail.figure('cold-worked-permeability'), trail.figure('cold-worked-saturation')],
        sources: row.sources,
      }),
    }
  }
  const annealed = { susceptibility: row.relativePermeability - 1, saturationTesla: UNSATURATED }
  return {
    weakest: annealed,
    strongest: annealed,
    step: trail.add(id, {
      label: `relative permeability of ${material.label}, annealed`,
      symbol: 'μr',
      value: row.relativePermeability,
      formula: 'listed',
      sources: row.sources,
    }),
  }
}
