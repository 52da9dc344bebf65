import type { BriefInput } from '../../src/contract/index.ts'

/** Own inventions with plausible numbers (common practice, no source). */
const metals = (steelMm: number, brassMm: number, ss316Mm: number): BriefInput['contaminants'] => [
  { material: 'steel', mustFindMm: steelMm, basis: 'customer' },
  { material: 'brass', mustFindMm: brassMm, basis: 'customer' },
  { material: 'ss316', mustFindMm: ss316Mm, basis: 'customer' },
]

const milkPowder: BriefInput = {
  title: 'Infant milk powder above the filler',
  market: 'EU',
  consumer: 'infants',
  product: { food: 'milk_powder', temperatureC: 25 },
  points: [
    {
      name: 'drop pipe',
      stage: 'free-fall',
      heightMm: 150,
      widthMm: 150,
      lengthMm: 300,
      kgPerHour: 6000,
      speedMPerMin: 238,
      pipeDiameterMm: 150,
      fallHeightMm: 800,
    },
  ],
  contaminants: metals(1, 1.3, 1.5),
}

export const BRIEFS = {
  brinedCheese: {
    title: 'Brined white cheese, 900 g block',
    market: 'EU',
    product: {
      food: 'custom',
      composition: { waterPct: 56, proteinPct: 15, fatPct: 22, carbohydratePct: 3, ashPct: 4 },
      structure: 'solid',
      densityGPerCm3: 1.06,
      unevennessMm: 0.5,
      temperatureC: 6,
      saltPct: 2.8,
    },
    points: [
      {
        name: 'sealed blocks',
        heightMm: 60,
        widthMm: 100,
        lengthMm: 150,
        massG: 900,
        parts: [{ material: 'pe', mm: 0.1, place: 'wrap' }],
        speedMPerMin: 20,
        packsPerMin: 40,
      },
    ],
    contaminants: metals(2, 2.5, 2.5),
  },
  biscuit: {
    title: 'Sweet biscuits, 300 g roll in clear film',
    market: 'EU',
    product: { food: 'biscuit' },
    points: [
      {
        name: 'wrapped rolls',
        heightMm: 50,
        widthMm: 70,
        lengthMm: 220,
        massG: 300,
        parts: [{ material: 'pp', mm: 0.04, place: 'wrap' }],
        speedMPerMin: 30,
        packsPerMin: 60,
      },
    ],
    contaminants: metals(1.5, 1.8, 2),
  },
  lasagne: {
    title: 'Lasagne in an aluminium tray, 400 g, chilled',
    market: 'UK',
    product: { food: 'ready_meal', temperatureC: 4, saltPct: 0.7 },
    points: [
      {
        name: 'sleeved trays',
        heightMm: 38,
        widthMm: 125,
        lengthMm: 180,
        massG: 400,
        parts: [
          { material: 'aluminium', mm: 0.09, place: 'tray' },
          { material: 'carton', mm: 0.5, place: 'sleeve' },
        ],
        speedMPerMin: 24,
        packsPerMin: 50,
      },
    ],
    contaminants: [
      { material: 'steel', mustFindMm: 2, basis: 'customer' },
      { material: 'ss316', mustFindMm: 2.5, basis: 'customer' },
      { material: 'glass_container', mustFindMm: 4, basis: 'injury' },
    ],
  },
  soupCan: {
    title: 'Vegetable soup, 400 g tinplate can',
    market: 'UK',
    product: { food: 'soup', temperatureC: 25 },
    points: [
      {
        name: 'after the cooler',
        heightMm: 105,
        widthMm: 72,
        lengthMm: 72,
        outline: 'cylinder',
        massG: 400,
        parts: [
          { material: 'steel', mm: 0.18, place: 'wall' },
          { material: 'steel', mm: 0.2, place: 'base' },
          { material: 'steel', mm: 0.2, place: 'lid' },
        ],
        speedMPerMin: 30,
        packsPerMin: 200,
      },
    ],
    contaminants: [
      { material: 'steel', mustFindMm: 3, basis: 'customer' },
      { material: 'ss316', mustFindMm: 3, basis: 'customer' },
      { material: 'glass_container', mustFindMm: 4, basis: 'injury' },
    ],
  },
  crisps: {
    title: 'Potato crisps, 35 g bag of metallised film',
    market: 'UK',
    product: { food: 'potato_crisps' },
    points: [
      {
        name: 'sealed bags',
        heightMm: 40,
        widthMm: 130,
        lengthMm: 170,
        massG: 35,
        parts: [{ material: 'metallised_film', mm: 0.03, place: 'wrap' }],
        speedMPerMin: 30,
        packsPerMin: 70,
      },
    ],
    contaminants: metals(2.5, 3, 4),
  },
  beans: {
    title: 'Green beans, frozen, on the belt to packing',
    market: 'EU',
    readyToEat: false,
    product: { food: 'beans_frozen', temperatureC: -18 },
    points: [
      {
        name: 'belt',
        stage: 'loose',
        heightMm: 60,
        widthMm: 380,
        lengthMm: 380,
        kgPerHour: 6000,
        speedMPerMin: 12,
      },
    ],
    contaminants: [
      { material: 'steel', mustFindMm: 2.5, basis: 'customer' },
      { material: 'ss316', mustFindMm: 4, basis: 'customer' },
      { material: 'stone_any', mustFindMm: 5, basis: 'customer' },
      { material: 'wood', mustFindMm: 6, basis: 'customer' },
      { material: 'pe', mustFindMm: 6, basis: 'customer' },
    ],
  },
  minceBlocks: {
    title: 'Minced beef, 25 kg block, chilled',
    market: 'UK',
    readyToEat: false,
    product: { food: 'beef_mince', temperatureC: 2 },
    points: [
      {
        name: 'lined blocks',
        heightMm: 170,
        widthMm: 360,
        lengthMm: 400,
        massG: 25000,
        parts: [{ material: 'pe', mm: 0.08, place: 'wrap' }],
        speedMPerMin: 12,
        packsPerMin: 6,
      },
    ],
    contaminants: [
      { material: 'steel', mustFindMm: 4, basis: 'customer' },
      { material: 'ss316', mustFindMm: 6, basis: 'customer' },
      { material: 'bone_hard', mustFindMm: 6, basis: 'customer' },
    ],
  },
  milkPowder,
  milkPowderWithIron: { ...milkPowder, product: { ...milkPowder.product, ironMgPerKg: 80 } },
  gherkins: {
    title: 'Gherkins in a 550 g glass jar, capped',
    market: 'EU',
    product: {
      food: 'custom',
      composition: { waterPct: 92, proteinPct: 0.6, fatPct: 0.2, carbohydratePct: 4.7, ashPct: 2.5 },
      structure: 'pieces-in-liquid',
      densityGPerCm3: 1.03,
      unevennessMm: 1,
      temperatureC: 22,
      saltPct: 1.8,
    },
    points: [
      {
        name: 'after capping',
        heightMm: 115,
        widthMm: 80,
        lengthMm: 80,
        outline: 'cylinder',
        massG: 550,
        parts: [
          { material: 'glass_container', mm: 2.5, place: 'wall' },
          { material: 'glass_container', mm: 4, place: 'base' },
          { material: 'steel', mm: 0.18, place: 'closure' },
        ],
        speedMPerMin: 30,
        packsPerMin: 150,
      },
    ],
    contaminants: [
      { material: 'glass_container', mustFindMm: 4, basis: 'injury' },
      { material: 'ss316', mustFindMm: 2, basis: 'customer' },
      { material: 'steel', mustFindMm: 2, basis: 'customer' },
    ],
  },
  loaf: {
    title: 'White bread, sliced, 800 g loaf with a plastic clip',
    market: 'UK',
    product: { food: 'bread' },
    points: [
      {
        name: 'bagged loaves',
        heightMm: 110,
        widthMm: 120,
        lengthMm: 280,
        massG: 800,
        parts: [{ material: 'pe', mm: 0.03, place: 'wrap' }],
        inserts: ['plastic clip'],
        speedMPerMin: 30,
        packsPerMin: 60,
      },
    ],
    contaminants: metals(2, 2.5, 3.5),
  },
} satisfies Record<string, BriefInput>
