/** Prints the simulated chance of finding beside the computed one: npx tsx test/practice/second-opinion-report.ts */
import { textTable } from '../../src/commands/text/text-table.ts'
import { answerOf, type Opinion } from './second-opinion-trials.ts'

const glass = { material: 'glass_container', shape: 'sphere' } as const
const steel = { material: 'ss304', shape: 'sphere' } as const
const wire = { material: 'ss304', shape: 'wire', lengthMm: 10 } as const

const cheddar = { food: 'cheddar', heightMm: 60, packs: 4 } as const
const chicken = { food: 'chicken_breast', heightMm: 25, packs: 4 } as const
const SOLID: readonly Opinion[] = [
  {
    name: 'cheddar 60 mm, glass',
    ...cheddar,
    machine: 'xray-single',
    kV: 65,
    piece: glass,
  },
  {
    name: 'cheddar 60 mm, glass',
    ...cheddar,
    machine: 'xray-dual',
    kV: 90,
    piece: glass,
  },
  {
    name: 'cheddar 60 mm, glass',
    ...cheddar,
    machine: 'xray-dual-fine',
    kV: 90,
    piece: glass,
  },
  {
    name: 'cheddar 60 mm, steel',
    ...cheddar,
    machine: 'xray-single',
    kV: 65,
    piece: steel,
  },
  {
    name: 'cheddar 60 mm, steel',
    ...cheddar,
    machine: 'xray-dual-fine',
    kV: 90,
    piece: steel,
  },
  {
    name: 'cheddar 60 mm, wire',
    ...cheddar,
    machine: 'xray-single',
    kV: 65,
    piece: wire,
  },
  {
    name: 'chicken 25 mm, glass',
    ...chicken,
    machine: 'xray-single',
    kV: 50,
    piece: glass,
  },
  {
    name: 'chicken 25 mm, glass',
    ...chicken,
    machine: 'xray-dual-fine',
    kV: 70,
    piece: glass,
  },
]
/** Pieces stand far apart: a crowd of equal pieces would count as part of the food's pattern. */
const sparse = { spacingMm: 40, packs: 12, factors: [0.6, 0.75, 0.9, 1.05, 1.2, 1.4, 1.7, 2] } as const
const almonds = { food: 'almond', heightMm: 60, ...sparse } as const
const hazelnuts = { food: 'hazelnut', heightMm: 45, ...sparse } as const
const GRANULAR: readonly Opinion[] = [
  { name: 'almonds 60 mm, glass', ...almonds, machine: 'xray-single', kV: 60, piece: glass },
  { name: 'almonds 60 mm, glass', ...almonds, machine: 'xray-dual', kV: 90, piece: glass },
  { name: 'almonds 60 mm, glass', ...almonds, machine: 'xray-dual-fine', kV: 90, piece: glass, packs: 8 },
  { name: 'hazelnuts 45 mm, glass', ...hazelnuts, machine: 'xray-single', kV: 55, piece: glass },
  { name: 'hazelnuts 45 mm, steel', ...hazelnuts, machine: 'xray-single', kV: 55, piece: steel },
  { name: 'hazelnuts 45 mm, glass', ...hazelnuts, machine: 'xray-dual', kV: 90, piece: glass },
]

const only = process.argv[2]
for (const [title, opinions] of [
  ['Solid food (filter with the model’s noise)', SOLID],
  ['Granular food (filter with the mean noise of clean packs)', GRANULAR],
] as const) {
  const rows = opinions
    .filter((o) => !only || `${o.name} ${o.machine}`.includes(only))
    .map((opinion) => {
      const { computedMm, knownMm, readMm, curves } = answerOf(opinion, 1)
      if (only) console.log(curves)
      return [
        `${opinion.name}, ${opinion.machine}`,
        computedMm.toFixed(2),
        knownMm.toFixed(2),
        (knownMm / computedMm).toFixed(3),
        readMm.toFixed(2),
        (readMm / computedMm).toFixed(3),
        String(curves.pieces),
      ]
    })
  if (rows.length > 0)
    console.log(
      `\n${title}: size found every second time, mm\n${textTable(['', 'computed', 'simulated', 'ratio', 'read from picture', 'ratio', 'pieces per size'], rows)}`,
    )
}
