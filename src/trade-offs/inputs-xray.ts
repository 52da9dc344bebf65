import { voltagesOf } from '../xray/beam/settings.ts'
import { everywhere, type Input } from './input.ts'

/** Pixel sizes between which the curve runs, mm: fine to coarse line detectors (assumption). */
const PIXEL_MM = [0.2, 1.6] as const

/** Tube voltage held at one value instead of being chosen; only what the machine's range allows. */
export const kV: Input = {
  id: 'kV',
  unit: 'kV',
  scale: 'linear',
  families: ['xray'],
  appliesAt: everywhere,
  present: (_, now) => now.kV,
  range: ({ machine }) => {
    const values = machine.family === 'xray' ? voltagesOf(machine) : []
    return [Math.min(...values), Math.max(...values)]
  },
  values: ({ machine }) => (machine.family === 'xray' ? voltagesOf(machine) : []),
  at: ({ point, machine }, value) => {
    if (machine.family !== 'xray') return { point, machine }
    const { kVRange: _, ...rest } = machine
    return { point, machine: { ...rest, kV: value } }
  },
}

/** Pixel on the detector; the belt, the tube and the blur in pixels stay, so a small pixel gets fewer photons. */
export const pixel: Input = {
  id: 'pixel',
  unit: 'mm',
  scale: 'log',
  families: ['xray'],
  appliesAt: everywhere,
  present: ({ machine }) => (machine.family === 'xray' ? machine.pixelMm : null),
  range: ({ machine }) => {
    const own = machine.family === 'xray' ? machine.pixelMm : PIXEL_MM[0]
    return [Math.min(PIXEL_MM[0], own), Math.max(PIXEL_MM[1], own)]
  },
  at: ({ point, machine }, pixelMm) =>
    machine.family === 'xray' ? { point, machine: { ...machine, pixelMm } } : { point, machine },
}
