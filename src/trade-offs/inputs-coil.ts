import { everywhere, type Input } from './input.ts'

/** Between these the curves run (common practice, no source): frequency kHz, conductivity S/m, temperature °C. */
const FREQUENCY_KHZ = [10, 1000] as const
const CONDUCTIVITY_S_PER_M = [0.001, 5] as const
const TEMPERATURE_C = [-30, 80] as const
const OPENING_MM = [20, 2000] as const

/** One frequency alone, whatever the machine could run together. */
export const frequency: Input = {
  id: 'frequency',
  unit: 'kHz',
  scale: 'log',
  families: ['coil'],
  appliesAt: everywhere,
  present: (_, now) => (now.frequenciesKHz.length === 1 ? now.frequenciesKHz[0]! : null),
  range: () => FREQUENCY_KHZ,
  at: ({ point, machine }, value) => {
    if (machine.family !== 'coil') return { point, machine }
    const { use: _use, mostAtOnce: _most, ...rest } = machine
    return { point, machine: { ...rest, frequenciesKHz: [value] } }
  },
}

/** Height of the opening, its width in proportion. */
export const opening: Input = {
  id: 'opening',
  unit: 'mm',
  scale: 'log',
  families: ['coil'],
  appliesAt: everywhere,
  present: (_, now) => now.openingMm?.heightMm ?? null,
  range: (_, { openingMm }) => {
    const present = openingMm?.heightMm ?? OPENING_MM[0]
    return [Math.max(OPENING_MM[0], present / 2), Math.min(OPENING_MM[1], present * 3)]
  },
  at: ({ point, machine }, apertureHeightMm, now) => {
    if (machine.family !== 'coil' || !now.openingMm) return { point, machine }
    const ratio = now.openingMm.widthMm / now.openingMm.heightMm
    return {
      point,
      machine: { ...machine, apertureHeightMm, apertureWidthMm: apertureHeightMm * ratio },
    }
  },
}

/** Conductivity of the food as it lies, taken as measured. */
export const conductivity: Input = {
  id: 'conductivity',
  unit: 'S/m',
  scale: 'log',
  families: ['coil'],
  appliesAt: everywhere,
  present: (_, now) => now.conductivitySPerM,
  range: (_, { conductivitySPerM }) => {
    const present = conductivitySPerM ?? CONDUCTIVITY_S_PER_M[0]
    return [Math.min(CONDUCTIVITY_S_PER_M[0], present), Math.max(CONDUCTIVITY_S_PER_M[1], present)]
  },
  at: ({ point, machine }, conductivitySPerM) => ({
    machine,
    point: { ...point, product: { ...point.product, conductivitySPerM } },
  }),
}

/** Temperature of the food; it moves the conductivity unless that was entered. */
export const temperature: Input = {
  id: 'temperature',
  unit: '°C',
  scale: 'linear',
  families: ['coil'],
  appliesAt: ({ product }) => product.conductivitySPerM === null,
  present: ({ point }) => point.product.temperatureC,
  range: ({ point: { product } }) => [
    Math.min(TEMPERATURE_C[0], product.temperatureC),
    Math.max(TEMPERATURE_C[1], product.temperatureC),
  ],
  at: ({ point, machine }, temperatureC) => ({
    machine,
    point: { ...point, product: { ...point.product, temperatureC } },
  }),
}
