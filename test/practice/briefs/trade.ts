import type { BriefInput } from '../../../src/contract/index.ts'

/** Own inventions with plausible numbers (common practice, no source), written before what they try. */
type Asked = BriefInput['contaminants']
type Point = BriefInput['points'][number]
type Equipment = NonNullable<BriefInput['equipment']>

const find = (...wanted: readonly [string, number][]): Asked =>
  wanted.map(([material, mustFindMm]) => ({ material, mustFindMm, basis: 'customer' }))

const pack = (
  name: string,
  [heightMm, widthMm, lengthMm]: readonly [number, number, number],
  massG: number,
  more: Partial<Point> = {},
): Point => ({
  name,
  heightMm,
  widthMm,
  lengthMm,
  massG,
  parts: [{ material: 'pe', mm: 0.06, place: 'wrap' }],
  speedMPerMin: 24,
  packsPerMin: 30,
  ...more,
})

const fall: Point = {
  name: 'drop pipe',
  stage: 'free-fall',
  heightMm: 100,
  widthMm: 100,
  lengthMm: 200,
  kgPerHour: 2000,
  speedMPerMin: 238,
  pipeDiameterMm: 100,
  fallHeightMm: 800,
}

const pipe = (diameterMm: number, kgPerHour: number): Point => ({
  name: 'pipe',
  stage: 'pumped',
  heightMm: diameterMm,
  widthMm: diameterMm,
  lengthMm: 300,
  pipeDiameterMm: diameterMm,
  kgPerHour,
  speedMPerMin: 20,
})

const belt = (heightMm: number, widthMm: number, kgPerHour: number): Point => ({
  name: 'belt',
  stage: 'loose',
  heightMm,
  widthMm,
  lengthMm: 300,
  kgPerHour,
  speedMPerMin: 20,
})

const brief = (
  title: string,
  product: BriefInput['product'],
  point: Point | Point[],
  contaminants: Asked,
  equipment: Equipment,
  more: Partial<BriefInput> = {},
): BriefInput => ({
  title,
  market: 'EU',
  product,
  points: Array.isArray(point) ? point : [point],
  contaminants,
  equipment,
  ...more,
})

const loaf = (...inserts: string[]) =>
  brief(
    `Loaf with ${inserts.join(', ') || 'no closure'}`,
    { food: 'bread' },
    pack('bagged loaves', [110, 120, 280], 800, { inserts }),
    find(['steel', 2], ['ss316', 3.5]),
    ['coil-single'],
  )

export const TRADE = {
  frozenBlock: brief(
    'Frozen beef trimmings, 27 kg block',
    { food: 'beef_mince', temperatureC: -18 },
    pack('lined blocks', [160, 400, 600], 27000, { speedMPerMin: 12, packsPerMin: 4 }),
    find(['steel', 4], ['ss316', 5], ['bone_hard', 12]),
    ['xray-single', 'coil-single'],
    { market: 'US' },
  ),
  flourSack: brief(
    'Wheat flour, 25 kg paper sack',
    { food: 'flour' },
    pack('sacks', [160, 400, 600], 25000, {
      parts: [{ material: 'carton', mm: 0.2, place: 'wrap' }],
      speedMPerMin: 15,
      packsPerMin: 6,
    }),
    find(['steel', 3], ['ss316', 4], ['stone_any', 6]),
    ['xray-single', 'coil-single'],
  ),
  siftedFlour: brief(
    'Flour behind the sifter',
    { food: 'flour' },
    fall,
    [
      { material: 'ss316', mustFindMm: 1.5, basis: 'customer' },
      { material: 'stone_any', mustFindMm: 2, basis: 'customer', entersAt: 'intake' },
      {
        material: 'ss304',
        shape: 'wire',
        lengthMm: 8,
        mustFindMm: 0.3,
        basis: 'customer',
        entersAt: 'sifter',
      },
    ],
    ['coil-free-fall'],
    { flow: [{ step: 'intake' }, { step: 'sifter', upstreamControl: 'sieve of 0.8 mm' }] },
  ),
  magnetInPlace: brief(
    'Sugar behind a magnet',
    { food: 'sugar' },
    fall,
    [
      { material: 'steel', mustFindMm: 0.3, basis: 'customer', entersAt: 'crusher' },
      { material: 'ss316', mustFindMm: 0.3, basis: 'customer', entersAt: 'crusher' },
      { material: 'lead', mustFindMm: 0.3, basis: 'customer' },
    ],
    ['coil-free-fall'],
    { flow: [{ step: 'crusher' }, { step: 'chute', upstreamControl: 'magnetic grid, cleaned each shift' }] },
  ),
  infantFormula: brief(
    'Infant formula in the drop pipe',
    { food: 'milk_powder' },
    { ...fall, pipeDiameterMm: 150, heightMm: 150, widthMm: 150, kgPerHour: 4000 },
    find(['steel', 1], ['ss316', 1.5]),
    ['coil-free-fall'],
    { market: 'US', consumer: 'infants' },
  ),
  chickenPipe: brief(
    'Ground chicken pumped to the former',
    { food: 'chicken_mince', temperatureC: 3 },
    pipe(76, 3000),
    find(['steel', 2], ['ss316', 3], ['bone_poultry', 5]),
    ['coil-pipe', 'coil-pipe-multi', 'xray-pipe'],
    { market: 'US' },
  ),
  juicePipe: brief(
    'Orange juice in the pipe',
    {
      food: 'custom',
      foodClass: 'juice',
      structure: 'liquid',
      densityGPerCm3: 1.05,
      composition: { waterPct: 88.5, proteinPct: 0.7, fatPct: 0.2, carbohydratePct: 10.2, ashPct: 0.4 },
      temperatureC: 4,
    },
    pipe(63, 3000),
    find(['steel', 1.5], ['ss316', 2.5]),
    ['coil-pipe', 'coil-pipe-multi'],
    { market: 'US' },
  ),
  wings: brief(
    'Chicken wings, tray',
    { food: 'chicken_breast', boneIn: true, temperatureC: 3 },
    pack('trays', [45, 150, 220], 800, { parts: [{ material: 'pp', mm: 0.5, place: 'tray' }] }),
    find(['bone_poultry', 5], ['ss316', 3], ['glass_any', 4]),
    ['xray-single', 'coil-multi'],
  ),
  fillets: brief(
    'Chicken fillets, boneless',
    { food: 'chicken_breast', temperatureC: 3 },
    belt(25, 300, 1500),
    find(['bone_poultry', 4], ['ss316', 2]),
    ['xray-dual', 'coil-multi'],
    { labelClaims: ['boneless'] },
  ),
  loafClip: loaf('metal clip'),
  loafPlasticClip: loaf('plastic clip'),
  loafTie: loaf('twist tie'),
  toy: brief(
    'Cereal with a toy',
    { food: 'cereal_flakes' },
    pack('cartons', [60, 190, 280], 375, {
      parts: [{ material: 'carton', mm: 0.5, place: 'wrap' }],
      inserts: ['plastic toy with metal spring'],
    }),
    find(['steel', 2], ['ss316', 3]),
    ['coil-single', 'xray-single'],
  ),
  radioLabel: brief(
    'Cheese with a radio label',
    { food: 'cheddar', temperatureC: 5 },
    pack('wedges', [40, 90, 120], 300, { inserts: ['RFID label'] }),
    find(['steel', 2], ['ss316', 3]),
    ['coil-multi', 'xray-single'],
  ),
  jerky: brief(
    'Dried sausage with an absorber',
    { food: 'sausage', temperatureC: 18 },
    pack('pouches', [20, 120, 180], 80, { inserts: ['oxygen absorber'] }),
    find(['steel', 2], ['ss316', 2.5]),
    ['coil-multi', 'static-field', 'xray-single'],
  ),
  foilSweets: brief(
    'Chocolates in foil',
    { food: 'chocolate', temperatureC: 18 },
    pack('bags', [40, 150, 200], 250, {
      parts: [{ material: 'aluminium_foil', mm: 0.012, place: 'wrap' }],
    }),
    find(['steel', 1.5], ['ss316', 2], ['glass_any', 4]),
    ['coil-single', 'xray-single', 'static-field'],
  ),
  sardines: brief(
    'Fish in an aluminium can',
    { food: 'tuna_canned', temperatureC: 20 },
    pack('cans', [24, 60, 105], 120, {
      parts: [
        { material: 'aluminium', mm: 0.23, place: 'base' },
        { material: 'aluminium', mm: 0.23, place: 'wall' },
        { material: 'aluminium', mm: 0.25, place: 'lid' },
      ],
    }),
    find(['ss316', 2], ['bone_fish', 2]),
    ['coil-single', 'xray-single'],
    { market: 'US' },
  ),
  salad: brief(
    'Leaf salad on the belt',
    {
      food: 'custom',
      foodClass: 'other',
      structure: 'plates',
      grainMm: 1,
      packing: 0.12,
      densityGPerCm3: 0.95,
      composition: { waterPct: 94, proteinPct: 1.5, fatPct: 0.2, carbohydratePct: 3.3, ashPct: 1 },
      temperatureC: 4,
    },
    belt(50, 350, 800),
    find(['insect', 8], ['stone_any', 5], ['wood', 8]),
    ['xray-single'],
  ),
  kibble: brief(
    'Dry dog food, 12 kg sack',
    { food: 'dog_food' },
    pack('sacks', [130, 350, 550], 9000, { speedMPerMin: 15, packsPerMin: 8 }),
    find(['steel', 3], ['ss316', 4], ['bone_hard', 8]),
    ['xray-single', 'coil-single'],
    { market: 'US', consumer: 'animals' },
  ),
  iceCream: brief(
    'Ice cream tub, 1 litre',
    {
      food: 'custom',
      foodClass: 'other',
      structure: 'solid',
      densityGPerCm3: 0.55,
      composition: { waterPct: 62, proteinPct: 3.5, fatPct: 10, carbohydratePct: 23.5, ashPct: 1 },
      temperatureC: -20,
      saltPct: 0.2,
    },
    pack('tubs', [95, 120, 160], 550, { parts: [{ material: 'pp', mm: 0.8, place: 'wall' }] }),
    find(['steel', 2], ['ss316', 2.5], ['nut_shell', 6]),
    ['coil-single', 'xray-single'],
  ),
  tray: brief(
    'Ready meal in a plastic tray, frozen',
    { food: 'ready_meal', foodClass: 'other', temperatureC: -18 },
    pack('trays', [40, 140, 190], 400, {
      parts: [
        { material: 'pp', mm: 0.6, place: 'tray' },
        { material: 'carton', mm: 0.5, place: 'sleeve' },
      ],
    }),
    find(['ss316', 2.5], ['pe', 6]),
    ['coil-single', 'xray-single'],
    { market: 'GB' },
  ),
  cheeseBlock: brief(
    'Cheddar block, 20 kg',
    { food: 'cheddar', temperatureC: 6 },
    pack('blocks', [180, 280, 380], 20000, { speedMPerMin: 12, packsPerMin: 5 }),
    find(['steel', 4], ['ss316', 6]),
    ['coil-multi', 'xray-single'],
  ),
  potatoes: brief(
    'Washed potatoes on a wide belt',
    { food: 'potato', temperatureC: 10 },
    belt(70, 800, 15000),
    find(['stone_any', 15], ['glass_any', 12], ['steel', 5]),
    ['xray-single', 'coil-single'],
  ),
  teaBags: brief(
    'Tea bags in a carton',
    {
      food: 'custom',
      foodClass: 'other',
      structure: 'granular',
      grainMm: 1,
      packing: 0.25,
      densityGPerCm3: 1.3,
      composition: { waterPct: 6, proteinPct: 20, fatPct: 2, carbohydratePct: 66, ashPct: 6 },
    },
    pack('cartons', [65, 80, 150], 160, {
      parts: [{ material: 'carton', mm: 0.5, place: 'wrap' }],
      inserts: ['staples'],
    }),
    find(['steel', 1], ['ss316', 1.5], ['stone_any', 2]),
    ['coil-single', 'xray-single'],
  ),
  spice: brief(
    'Ground pepper in free fall',
    {
      food: 'custom',
      foodClass: 'other',
      structure: 'powder',
      grainMm: 0.3,
      packing: 0.4,
      densityGPerCm3: 1.4,
      composition: { waterPct: 10, proteinPct: 11, fatPct: 4, carbohydratePct: 70, ashPct: 5 },
    },
    fall,
    find(['steel', 1], ['ss316', 1.2], ['stone_any', 1]),
    ['coil-free-fall', 'sieve', 'magnet'],
  ),
  twoLines: brief(
    'Soup in jars and in pouches',
    { food: 'soup', foodClass: 'other', temperatureC: 30 },
    [
      pack('jars', [100, 75, 75], 380, {
        line: 'jar line',
        outline: 'cylinder',
        parts: [{ material: 'glass_container', mm: 2.4, place: 'wall' }],
      }),
      pack('pouches', [25, 130, 190], 400, {
        line: 'pouch line',
        parts: [{ material: 'aluminium_foil', mm: 0.009, place: 'wrap' }],
      }),
    ],
    find(['glass_container', 4], ['ss316', 2]),
    ['xray-single', 'xray-side'],
  ),
} satisfies Record<string, BriefInput>
