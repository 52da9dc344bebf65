import type { Point } from '../contract/index.ts'
import { everywhere, type Input, onBelt } from './input.ts'

/** What the contract allows; a curve keeps inside it. */
const HEIGHT_MM = [1, 2000] as const
const SPEED_M_PER_MIN = [0.1, 600] as const
const FALSE_REJECTS = [1e-5, 0.05] as const

/** The least height that still holds one grain (of plates: one plate). */
const leastHeightMm = ({ product }: Point): number => Math.max(HEIGHT_MM[0], product.grainMm)

const times = (value: number | null, factor: number): number | null =>
  value === null ? null : value * factor

/** Height of the food alone; the belt keeps its speed, so a shallower bed carries less. */
export const height: Input = {
  id: 'height',
  unit: 'mm',
  scale: 'log',
  families: ['xray', 'coil'],
  appliesAt: onBelt,
  present: ({ point }) => point.filledMm,
  range: ({ point }) => [
    Math.max(leastHeightMm(point), point.filledMm / 4),
    Math.min(HEIGHT_MM[1], point.filledMm * 2.5),
  ],
  at: ({ point, machine }, heightMm) => {
    const share = heightMm / point.filledMm
    return {
      machine,
      point: {
        ...point,
        heightMm,
        filledMm: heightMm,
        massG: times(point.massG, share),
        kgPerHour: times(point.kgPerHour, share),
      },
    }
  },
}

/**
 * Height and speed coupled so that as many kg pass in an hour: half as deep, twice as fast. Packs get lighter
 * and more of them pass.
 */
export const depthWithSpeed: Input = {
  id: 'depth-with-speed',
  unit: 'mm',
  scale: 'log',
  families: ['xray', 'coil'],
  appliesAt: onBelt,
  present: ({ point }) => point.filledMm,
  range: ({ point }) => {
    const flow = point.filledMm * point.speedMPerMin
    return [
      Math.max(leastHeightMm(point), point.filledMm / 4, flow / SPEED_M_PER_MIN[1]),
      Math.min(HEIGHT_MM[1], point.filledMm * 2.5, flow / SPEED_M_PER_MIN[0]),
    ]
  },
  at: ({ point, machine }, heightMm) => {
    const share = heightMm / point.filledMm
    return {
      machine,
      point: {
        ...point,
        heightMm,
        filledMm: heightMm,
        speedMPerMin: point.speedMPerMin / share,
        massG: times(point.massG, share),
        packsPerMin: times(point.packsPerMin, 1 / share),
      },
    }
  },
}

/** Speed alone; packs and kg per hour go with it. */
export const speed: Input = {
  id: 'speed',
  unit: 'm/min',
  scale: 'log',
  families: ['xray', 'coil'],
  appliesAt: onBelt,
  present: ({ point }) => point.speedMPerMin,
  range: ({ point }) => [
    Math.max(SPEED_M_PER_MIN[0], point.speedMPerMin / 4),
    Math.min(SPEED_M_PER_MIN[1], point.speedMPerMin * 4),
  ],
  at: ({ point, machine }, speedMPerMin) => {
    const share = speedMPerMin / point.speedMPerMin
    return {
      machine,
      point: {
        ...point,
        speedMPerMin,
        packsPerMin: times(point.packsPerMin, share),
        kgPerHour: times(point.kgPerHour, share),
      },
    }
  },
}

/** Good packs that may be rejected. */
export const falseRejects: Input = {
  id: 'false-rejects',
  unit: '',
  scale: 'log',
  families: ['xray', 'coil'],
  appliesAt: everywhere,
  present: ({ point }) => point.falseRejectsPerPack,
  range: ({ point }) => [
    Math.min(FALSE_REJECTS[0], point.falseRejectsPerPack),
    Math.max(FALSE_REJECTS[1], point.falseRejectsPerPack),
  ],
  at: ({ point, machine }, falseRejectsPerPack) => ({ machine, point: { ...point, falseRejectsPerPack } }),
}
