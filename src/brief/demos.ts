import type { BriefInput } from '../contract/brief.ts'

export interface Demo {
  readonly id: string
  readonly title: string
  /** What this brief shows, in one line. */
  readonly shows: string
  readonly brief: BriefInput
}

const hazelnuts: BriefInput = {
  title: 'Hazelnut kernels, 1 kg pillow bag',
  market: 'EU',
  consumer: 'general',
  readyToEat: true,
  product: { food: 'hazelnut' },
  points: [
    {
      name: 'sorting belt',
      stage: 'loose',
      heightMm: 15,
      widthMm: 400,
      lengthMm: 400,
      kgPerHour: 3000,
      speedMPerMin: 20,
      falseRejectsPerPack: 0.001,
    },
    {
      name: 'after packing',
      stage: 'packed',
      heightMm: 45,
      widthMm: 170,
      lengthMm: 220,
      massG: 1000,
      parts: [{ material: 'pe', mm: 0.06, place: 'wrap' }],
      speedMPerMin: 30,
      packsPerMin: 50,
      kgPerHour: 3000,
      hoursPerDay: 16,
      falseRejectsPerPack: 0.001,
      checkIntervalMin: 60,
      reactMin: 10,
    },
  ],
  contaminants: [
    { material: 'stone_any', shape: 'sphere', mustFindMm: 4, basis: 'customer', severity: 4, likelihood: 3 },
    { material: 'glass_any', shape: 'sphere', mustFindMm: 3, basis: 'injury', severity: 4, likelihood: 2 },
    {
      material: 'ss304',
      shape: 'wire',
      lengthMm: 10,
      mustFindMm: 0.6,
      basis: 'customer',
      severity: 3,
      likelihood: 2,
    },
    { material: 'steel', shape: 'sphere', mustFindMm: 1.5, basis: 'customer', severity: 3, likelihood: 3 },
    { material: 'nut_shell', shape: 'sphere', basis: 'best-achievable', severity: 3, likelihood: 5 },
    { material: 'rubber_any', shape: 'sphere', mustFindMm: 5, basis: 'customer', severity: 2, likelihood: 2 },
  ],
}

const cheddar: BriefInput = {
  title: 'Cheddar block, 5 kg, film wrapped',
  market: 'UK',
  consumer: 'general',
  readyToEat: true,
  product: { food: 'cheddar', temperatureC: 8, saltPct: 1.8 },
  points: [
    {
      name: 'end of the block line',
      stage: 'packed',
      heightMm: 100,
      widthMm: 180,
      lengthMm: 265,
      massG: 5000,
      parts: [{ material: 'pe', mm: 0.09, place: 'wrap' }],
      speedMPerMin: 18,
      packsPerMin: 20,
      hoursPerDay: 12,
      falseRejectsPerPack: 0.0005,
      checkIntervalMin: 120,
      reactMin: 15,
    },
  ],
  contaminants: [
    {
      material: 'stainless_any',
      shape: 'sphere',
      mustFindMm: 2.5,
      basis: 'customer',
      severity: 3,
      likelihood: 3,
    },
    { material: 'aluminium', shape: 'sphere', mustFindMm: 3, basis: 'customer', severity: 3, likelihood: 2 },
    { material: 'glass_any', shape: 'sphere', mustFindMm: 4, basis: 'injury', severity: 4, likelihood: 1 },
    { material: 'pom', shape: 'sphere', mustFindMm: 5, basis: 'customer', severity: 2, likelihood: 3 },
    {
      material: 'rubber_filled',
      shape: 'sphere',
      mustFindMm: 5,
      basis: 'customer',
      severity: 2,
      likelihood: 3,
    },
  ],
}

const sauce: BriefInput = {
  title: 'Tomato and herb sauce, 350 g glass jar',
  market: 'EU',
  consumer: 'general',
  readyToEat: true,
  product: {
    food: 'custom',
    composition: { waterPct: 84, proteinPct: 1.5, fatPct: 3, carbohydratePct: 9.5, ashPct: 2 },
    densityGPerCm3: 1.04,
    structure: 'pieces-in-liquid',
    unevennessMm: 0.3,
    temperatureC: 35,
    saltPct: 1.2,
  },
  points: [
    {
      name: 'after the cooler',
      stage: 'packed',
      heightMm: 95,
      widthMm: 68,
      lengthMm: 68,
      massG: 350,
      outline: 'cylinder',
      parts: [
        { material: 'glass_container', mm: 2.5, place: 'wall' },
        { material: 'glass_container', mm: 4, place: 'base' },
        { material: 'steel', mm: 0.17, place: 'closure' },
      ],
      speedMPerMin: 30,
      packsPerMin: 200,
      hoursPerDay: 16,
      falseRejectsPerPack: 0.0005,
      checkIntervalMin: 60,
      reactMin: 5,
    },
  ],
  contaminants: [
    {
      material: 'glass_container',
      shape: 'sphere',
      mustFindMm: 3,
      basis: 'injury',
      severity: 5,
      likelihood: 2,
    },
    {
      material: 'glass_container',
      shape: 'flake',
      faceMm2: 30,
      mustFindMm: 2.5,
      basis: 'injury',
      severity: 5,
      likelihood: 2,
    },
    { material: 'stone_any', shape: 'sphere', mustFindMm: 4, basis: 'customer', severity: 4, likelihood: 2 },
    { material: 'ss304', shape: 'sphere', mustFindMm: 1.5, basis: 'customer', severity: 3, likelihood: 2 },
  ],
}

const chocolate: BriefInput = {
  title: 'Milk chocolate bar, 100 g, foil and paper',
  market: 'US',
  consumer: 'general',
  readyToEat: true,
  product: { food: 'chocolate', temperatureC: 18 },
  points: [
    {
      name: 'bare bars, before wrapping',
      stage: 'packed',
      heightMm: 7,
      widthMm: 75,
      lengthMm: 150,
      massG: 100,
      speedMPerMin: 40,
      packsPerMin: 200,
      hoursPerDay: 20,
      falseRejectsPerPack: 0.001,
    },
    {
      name: 'wrapped bars',
      stage: 'packed',
      heightMm: 7,
      widthMm: 75,
      lengthMm: 150,
      massG: 100,
      parts: [
        { material: 'aluminium_foil', mm: 0.009, place: 'wrap' },
        { material: 'carton', mm: 0.25, place: 'sleeve' },
      ],
      speedMPerMin: 40,
      packsPerMin: 200,
      hoursPerDay: 20,
      falseRejectsPerPack: 0.001,
      checkIntervalMin: 60,
      reactMin: 5,
    },
  ],
  contaminants: [
    { material: 'ss316', shape: 'sphere', mustFindMm: 1.2, basis: 'customer', severity: 3, likelihood: 2 },
    { material: 'steel', shape: 'sphere', mustFindMm: 1, basis: 'customer', severity: 3, likelihood: 2 },
    { material: 'pc', shape: 'sphere', mustFindMm: 3, basis: 'customer', severity: 3, likelihood: 3 },
    { material: 'glass_any', shape: 'sphere', mustFindMm: 2, basis: 'injury', severity: 4, likelihood: 1 },
    { material: 'insect', shape: 'sphere', basis: 'best-achievable', severity: 2, likelihood: 2 },
  ],
}

const beans: BriefInput = {
  title: 'Green beans, frozen, deep bed',
  market: 'EU',
  consumer: 'general',
  readyToEat: false,
  product: { food: 'beans_frozen', temperatureC: -18 },
  points: [
    {
      name: 'belt to the packing hall',
      stage: 'loose',
      heightMm: 80,
      widthMm: 390,
      lengthMm: 390,
      kgPerHour: 8500,
      speedMPerMin: 9,
      hoursPerDay: 20,
      falseRejectsPerPack: 0.001,
      checkIntervalMin: 60,
      reactMin: 5,
    },
  ],
  contaminants: [
    { material: 'stone_any', shape: 'sphere', mustFindMm: 4, basis: 'customer', severity: 4, likelihood: 4 },
    { material: 'glass_any', shape: 'sphere', mustFindMm: 4, basis: 'injury', severity: 4, likelihood: 2 },
    { material: 'steel', shape: 'sphere', mustFindMm: 2.5, basis: 'customer', severity: 3, likelihood: 3 },
    { material: 'wood', shape: 'sphere', mustFindMm: 6, basis: 'customer', severity: 2, likelihood: 4 },
    { material: 'pe', shape: 'sphere', mustFindMm: 6, basis: 'customer', severity: 2, likelihood: 3 },
  ],
}

const chicken: BriefInput = {
  title: 'Chicken breast fillets, boneless, 400 g tray',
  market: 'UK',
  consumer: 'general',
  readyToEat: false,
  labelClaims: ['boneless'],
  product: { food: 'chicken_breast', temperatureC: 3 },
  points: [
    {
      name: 'single fillets after trimming',
      stage: 'loose',
      heightMm: 25,
      widthMm: 110,
      lengthMm: 170,
      speedMPerMin: 25,
      kgPerHour: 1500,
      hoursPerDay: 14,
      falseRejectsPerPack: 0.01,
    },
    {
      name: 'sealed trays',
      stage: 'packed',
      heightMm: 30,
      widthMm: 110,
      lengthMm: 130,
      massG: 400,
      parts: [
        { material: 'pp', mm: 0.5, place: 'tray' },
        { material: 'pet', mm: 0.05, place: 'lid' },
      ],
      speedMPerMin: 25,
      packsPerMin: 60,
      hoursPerDay: 14,
      falseRejectsPerPack: 0.002,
      checkIntervalMin: 60,
      reactMin: 10,
    },
  ],
  contaminants: [
    {
      material: 'bone_poultry',
      shape: 'wire',
      lengthMm: 10,
      mustFindMm: 2.5,
      basis: 'customer',
      severity: 3,
      likelihood: 5,
    },
    {
      material: 'bone_poultry_soft',
      shape: 'sphere',
      mustFindMm: 4,
      basis: 'customer',
      severity: 2,
      likelihood: 5,
    },
    {
      material: 'stainless_any',
      shape: 'sphere',
      mustFindMm: 2.5,
      basis: 'customer',
      severity: 3,
      likelihood: 2,
    },
    { material: 'cartilage', shape: 'sphere', basis: 'best-achievable', severity: 1, likelihood: 5 },
  ],
}

const milkPowder: BriefInput = {
  title: 'Whole milk powder, falling to the bag filler',
  market: 'other',
  consumer: 'infants',
  readyToEat: true,
  product: { food: 'milk_powder', temperatureC: 25 },
  points: [
    {
      name: 'drop pipe above the filler',
      stage: 'free-fall',
      heightMm: 150,
      widthMm: 150,
      lengthMm: 300,
      kgPerHour: 4000,
      speedMPerMin: 238,
      pipeDiameterMm: 150,
      fallHeightMm: 800,
      hoursPerDay: 22,
      falseRejectsPerPack: 0.001,
    },
  ],
  contaminants: [
    { material: 'ss316', shape: 'sphere', mustFindMm: 1.2, basis: 'customer', severity: 4, likelihood: 2 },
    { material: 'steel', shape: 'sphere', mustFindMm: 0.9, basis: 'customer', severity: 4, likelihood: 3 },
    { material: 'silicone', shape: 'sphere', mustFindMm: 3, basis: 'customer', severity: 3, likelihood: 3 },
  ],
}

const mince: BriefInput = {
  title: 'Beef mince, pumped to the former',
  market: 'EU',
  consumer: 'general',
  readyToEat: false,
  product: { food: 'beef_mince', temperatureC: 2 },
  points: [
    {
      name: 'pipe after the grinder',
      stage: 'pumped',
      heightMm: 76,
      widthMm: 76,
      lengthMm: 300,
      kgPerHour: 3000,
      speedMPerMin: 10.7,
      pipeDiameterMm: 76,
      hoursPerDay: 14,
      falseRejectsPerPack: 0.001,
    },
  ],
  contaminants: [
    { material: 'steel', shape: 'sphere', mustFindMm: 2, basis: 'customer', severity: 3, likelihood: 3 },
    {
      material: 'stainless_any',
      shape: 'sphere',
      mustFindMm: 3,
      basis: 'customer',
      severity: 3,
      likelihood: 3,
    },
    { material: 'bone_hard', shape: 'sphere', mustFindMm: 4, basis: 'customer', severity: 3, likelihood: 5 },
  ],
}

/** Invented briefs to start from; no plant or brand stands behind them. */
export const demos: readonly Demo[] = [
  {
    id: 'hazelnuts',
    title: hazelnuts.title!,
    shows: 'Loose on the sorting belt or in the bag: grain against size.',
    brief: hazelnuts,
  },
  {
    id: 'cheddar',
    title: cheddar.title!,
    shows: 'A thick, salted, cold block: metal detector against x-ray.',
    brief: cheddar,
  },
  {
    id: 'sauce-jar',
    title: sauce.title!,
    shows: 'Glass in glass: what the base and the heel hide.',
    brief: sauce,
  },
  {
    id: 'chocolate',
    title: chocolate.title!,
    shows: 'Thin food, before and after the foil.',
    brief: chocolate,
  },
  {
    id: 'beans',
    title: beans.title!,
    shows: 'A deep bed of grains, and what a thinner one would bring.',
    brief: beans,
  },
  {
    id: 'chicken',
    title: chicken.title!,
    shows: 'Bone in an uneven fillet sold as boneless.',
    brief: chicken,
  },
  {
    id: 'milk-powder',
    title: milkPowder.title!,
    shows: 'Powder in free fall, for infants.',
    brief: milkPowder,
  },
  {
    id: 'mince',
    title: mince.title!,
    shows: 'Pumped in a pipe, where no x-ray machine of the list fits.',
    brief: mince,
  },
]
