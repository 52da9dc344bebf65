/** Prints the simulated chance of finding beside the computed one: npx tsx test/practice/second-opinion-report.ts */
import { textTable } from '../../src/commands/text-table.ts'
import { answerOf, type Opinion } from './second-opinion-trials.ts'

const glass = { material: 'glass_container', shape: 'sphere' } as const
const steel = { material: 'ss304', shape: 'sphere' } as const
const wire = { material: 'ss304', shape: 'wire', lengthMm: 10 } as const

const SOLID: readonly Opinion[] = [
  {
    name: 'cheddar 60 mm, glass',
    food: 'cheddar',
    heightMm: 60,
    machine: 'xray-single',
    kV: 65,
    piece: glass,
    packs: 4,
  },
  {
    name: 'cheddar 60 mm, glass',
    food: 'cheddar',
    heightMm: 60,
    machine: 'xray-dual',
    kV: 90,
    piece: glass,
    packs: 4,
  },
  {
    name: 'cheddar 60 mm, glass',
    food: 'cheddar',
    heightMm: 60,
    machine: 'xray-dual-fine',
    kV: 90,
    piece: glass,
    packs: 4,
  },
  {
    name: 'cheddar 60 mm, steel',
    food: 'cheddar',
    heightMm: 60,
    machine: 'xray-single',
    kV: 65,
    piece: steel,
    packs: 4,
  },
  {
    name: 'cheddar 60 mm, steel',
    food: 'cheddar',
    heightMm: 60,
    machine: 'xray-dual-fine',
    kV: 90,
    piece: steel,
    packs: 4,
  },
  {
    name: 'cheddar 60 mm, wire',
    food: 'cheddar',
    heightMm: 60,
    machine: 'xray-single',
    kV: 65,
    piece: wire,
    packs: 4,
  },
  {
    name: 'chicken 25 mm, glass',
    food: 'chicken_breast',
    heightMm: 25,
    machine: 'xray-single',
    kV: 50,
    piece: glass,
    packs: 4,
  },
  {
    name: 'chicken 25 mm, glass',
    food: 'chicken_breast',
    heightMm: 25,
    machine: 'xray-dual-fine',
    kV: 70,
    piece: glass,
    packs: 4,
  },
]
const WIDER = [0.6, 0.75, 0.9, 1.05, 1.2, 1.4, 1.7, 2]
const GRANULAR: readonly Opinion[] = [
  {
    name: 'almonds 60 mm, glass',
    food: 'almond',
    heightMm: 60,
    machine: 'xray-single',
    kV: 60,
    piece: glass,
    packs: 6,
    factors: WIDER,
  },
  {
    name: 'almonds 60 mm, glass',
    food: 'almond',
    heightMm: 60,
    machine: 'xray-dual',
    kV: 90,
    piece: glass,
    packs: 6,
    factors: WIDER,
  },
  {
    name: 'almonds 60 mm, glass',
    food: 'almond',
    heightMm: 60,
    machine: 'xray-dual-fine',
    kV: 90,
    piece: glass,
    packs: 4,
    factors: WIDER,
  },
  {
    name: 'hazelnuts 45 mm, glass',
    food: 'hazelnut',
    heightMm: 45,
    machine: 'xray-single',
    kV: 55,
    piece: glass,
    packs: 6,
    factors: WIDER,
  },
  {
    name: 'hazelnuts 45 mm, steel',
    food: 'hazelnut',
    heightMm: 45,
    machine: 'xray-single',
    kV: 55,
    piece: steel,
    packs: 6,
    factors: WIDER,
  },
  {
    name: 'hazelnuts 45 mm, glass',
    food: 'hazelnut',
    heightMm: 45,
    machine: 'xray-dual',
    kV: 90,
    piece: glass,
    packs: 6,
    factors: WIDER,
  },
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
