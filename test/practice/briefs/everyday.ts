import type { BriefInput } from '../../../src/contract/index.ts'

/**
 * Everyday lines of the food trade, told as a factory would tell them. Own inventions with plausible numbers (common
 * practice, no source), written before what they try.
 */
type Point = BriefInput['points'][number]
type Asked = BriefInput['contaminants'][number]

export const find = (...wanted: readonly (readonly [string, number, Partial<Asked>?])[]): Asked[] =>
  wanted.map(([material, mustFindMm, more = {}]) => ({ material, mustFindMm, basis: 'customer', ...more }))

export const pack = (
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

export const fall = (diameterMm: number, kgPerHour: number): Point => ({
  name: 'drop pipe',
  stage: 'free-fall',
  heightMm: diameterMm,
  widthMm: diameterMm,
  lengthMm: 200,
  kgPerHour,
  speedMPerMin: 238,
  pipeDiameterMm: diameterMm,
  fallHeightMm: 800,
})

export const pipe = (diameterMm: number, kgPerHour: number, name = 'pipe'): Point => ({
  name,
  stage: 'pumped',
  heightMm: diameterMm,
  widthMm: diameterMm,
  lengthMm: 300,
  pipeDiameterMm: diameterMm,
  kgPerHour,
  speedMPerMin: 20,
})

export const belt = (
  heightMm: number,
  widthMm: number,
  kgPerHour: number,
  name = 'belt',
  speedMPerMin = 20,
): Point => ({ name, stage: 'loose', heightMm, widthMm, lengthMm: 300, kgPerHour, speedMPerMin })

type Part = NonNullable<Point['parts']>[number]
export const CARTON: Part = { material: 'carton', mm: 0.5, place: 'wrap' }
export const foil = (mm: number, place: Part['place'] = 'wrap'): Part => ({
  material: 'aluminium_foil',
  mm,
  place,
})
export const plastic = (material: string, mm: number, place: Part['place']): Part => ({ material, mm, place })
export const TIN: Part[] = [
  { material: 'steel', mm: 0.2, place: 'wall' },
  { material: 'steel', mm: 0.25, place: 'base' },
  { material: 'steel', mm: 0.25, place: 'lid' },
]
const JAR: Part[] = [
  { material: 'glass_container', mm: 2.5, place: 'wall' },
  { material: 'glass_container', mm: 4, place: 'base' },
  { material: 'steel', mm: 0.2, place: 'closure' },
]

export const line = (
  title: string,
  product: BriefInput['product'],
  points: Point | Point[],
  contaminants: Asked[],
  more: Partial<BriefInput> = {},
): BriefInput => ({
  title,
  market: 'EU',
  product,
  points: Array.isArray(points) ? points : [points],
  contaminants,
  ...more,
})

export const EVERYDAY = {
  codBlock: line(
    'Frozen cod block 7.5 kg',
    { food: 'cod', temperatureC: -20 },
    pack('blocks', [63, 255, 485], 7484, { parts: [CARTON], packsPerMin: 8, speedMPerMin: 15 }),
    find(['steel', 3], ['ss316', 4], ['bone_fish', 1, { shape: 'wire', lengthMm: 15 }]),
    { labelClaims: ['boneless'] },
  ),
  milkSack: line(
    'Skimmed milk powder 25 kg sack',
    { food: 'milk_powder' },
    pack('sacks', [150, 400, 700], 25000, {
      parts: [plastic('carton', 0.2, 'wrap'), plastic('pe', 0.1, 'wrap')],
      packsPerMin: 5,
      speedMPerMin: 15,
    }),
    find(['steel', 2.5], ['ss316', 3.5], ['glass_any', 6]),
  ),
  sugarFall: line(
    'Sugar to the silo, free fall',
    { food: 'sugar' },
    fall(150, 8000),
    find(['steel', 1.5], ['ss316', 2], ['stone_any', 3], ['pe', 5]),
  ),
  saucePipe: line(
    'Tomato sauce pumped hot, then jars',
    { food: 'tomato_sauce', temperatureC: 85 },
    [
      pipe(63, 4000),
      pack('capped jars', [120, 75, 75], 400, {
        parts: JAR,
        outline: 'cylinder',
        packsPerMin: 120,
        speedMPerMin: 30,
      }),
    ],
    find(['steel', 1.5], ['ss316', 2.5], ['glass_container', 3, { entersAt: 'filling' }]),
    {
      flow: [
        { step: 'cooking', entersHere: ['steel', 'ss316'] },
        { step: 'filling', entersHere: ['glass_container'] },
      ],
    },
  ),
  wholeChicken: line(
    'Whole chicken, fresh, bagged',
    { food: 'chicken_breast', temperatureC: 3, boneIn: true },
    pack('bagged birds', [120, 180, 260], 1600),
    find(['steel', 3], ['ss316', 4], ['bone_poultry', 4], ['wood', 8]),
  ),
  breadClip: line(
    'Loaf with metal clip',
    { food: 'bread' },
    [
      belt(110, 400, 2000, 'cooled loaves'),
      pack('bagged loaves', [110, 120, 280], 800, { inserts: ['metal clip'] }),
    ],
    find(['steel', 1.5], ['ss316', 2.5], ['stone_any', 5]),
  ),
  tunaCan: line(
    'Tuna in brine, can',
    { food: 'tuna_canned', structure: 'pieces-in-liquid' },
    pack('closed cans', [37, 85, 85], 160, {
      outline: 'cylinder',
      parts: TIN,
      packsPerMin: 200,
      speedMPerMin: 40,
    }),
    find(['steel', 2], ['glass_any', 3], ['bone_fish', 3]),
  ),
  foilSweets: line(
    'Sweets in foil, 250 g bag',
    { food: 'chocolate', structure: 'granular', grainMm: 22, packing: 0.55 },
    [
      belt(30, 300, 600, 'before wrapping'),
      pack('bags', [50, 150, 220], 250, { parts: [foil(0.012), plastic('pp', 0.03, 'wrap')] }),
    ],
    find(['steel', 1.5], ['ss316', 2], ['glass_any', 3], ['pe', 5]),
  ),
  salad: line(
    'Leaf salad with stones',
    { food: 'broccoli_frozen', temperatureC: 4 },
    pack('bags', [60, 200, 250], 150, { packsPerMin: 60, speedMPerMin: 40 }),
    find(['stone_any', 4], ['ss316', 2], ['insect', 5], ['glass_any', 4], ['wood', 8]),
  ),
  kibble: line(
    'Dog kibble 15 kg bag',
    { food: 'dog_food' },
    pack('sacks', [140, 400, 650], 15000, {
      parts: [plastic('pet', 0.1, 'wrap')],
      packsPerMin: 8,
      speedMPerMin: 18,
    }),
    find(['steel', 3], ['ss316', 4], ['stone_any', 5], ['bone_any', 8]),
    { consumer: 'animals' },
  ),
  formulaCan: line(
    'Infant formula 800 g tinplate can',
    { food: 'milk_powder' },
    [
      fall(100, 2000),
      pack('seamed cans', [165, 127, 127], 800, {
        outline: 'cylinder',
        parts: TIN,
        packsPerMin: 60,
        speedMPerMin: 20,
      }),
    ],
    find(['steel', 1], ['ss316', 1.5], ['glass_any', 3]),
    { consumer: 'infants', readyToEat: true },
  ),
  pepper: line(
    'Ground pepper in PET shaker 50 g',
    { food: 'flour', structure: 'powder' },
    pack('shakers', [100, 45, 45], 50, {
      outline: 'cylinder',
      parts: [plastic('pet', 0.8, 'wall'), plastic('pet', 1, 'base'), plastic('pp', 1.5, 'closure')],
      packsPerMin: 120,
    }),
    find(['steel', 1], ['ss316', 1.2], ['stone_any', 2.5], ['glass_any', 2.5]),
  ),
  iceCream: line(
    'Ice cream tub 1 l',
    { food: 'yoghurt', temperatureC: -20, densityGPerCm3: 0.55, structure: 'solid' },
    pack('tubs with lids', [95, 120, 170], 500, {
      parts: [plastic('pp', 0.6, 'wall'), plastic('pp', 0.6, 'base'), plastic('pp', 0.6, 'lid')],
    }),
    find(['steel', 1.5], ['ss316', 2.5], ['glass_any', 3]),
  ),
  readyMeal: line(
    'Ready meal, CPET tray, film lid, chilled',
    { food: 'ready_meal', temperatureC: 4 },
    pack('lidded trays', [35, 150, 190], 400, {
      parts: [plastic('pet', 0.6, 'tray'), plastic('pet', 0.05, 'lid')],
      packsPerMin: 60,
      speedMPerMin: 30,
    }),
    find(['steel', 1.5], ['ss316', 2.5], ['bone_hard', 4], ['glass_any', 4]),
  ),
  wheel: line(
    'Gouda wheel 12 kg',
    { food: 'cheddar', temperatureC: 12 },
    pack('wheels', [110, 360, 360], 11500, {
      outline: 'cylinder',
      parts: [plastic('pe', 0.2, 'wrap')],
      packsPerMin: 6,
      speedMPerMin: 12,
    }),
    find(['steel', 3], ['ss316', 5], ['glass_any', 6]),
  ),
  riceSack: line(
    'Rice 25 kg woven sack',
    { food: 'rice' },
    pack('sacks', [130, 400, 650], 25000, {
      parts: [plastic('pp', 0.2, 'wrap')],
      packsPerMin: 8,
      speedMPerMin: 18,
    }),
    find(['steel', 2.5], ['ss316', 3], ['stone_any', 6], ['glass_any', 6]),
  ),
  potatoes: line(
    'Raw potatoes on a 1000 mm belt',
    { food: 'potato', temperatureC: 10 },
    belt(80, 1000, 15000, 'belt', 30),
    find(['stone_any', 12], ['steel', 4], ['wood', 20], ['glass_any', 10], ['rubber_any', 20]),
  ),
  teaBags: line(
    'Tea bags with staples, carton',
    { food: 'oats', structure: 'granular', grainMm: 1 },
    pack('cartons', [65, 75, 160], 100, { parts: [CARTON], inserts: ['staple'] }),
    find(['steel', 1.5], ['ss316', 2], ['stone_any', 4]),
  ),
  jerky: line(
    'Beef jerky with oxygen absorber',
    { food: 'beef_mince', temperatureC: 20, conductivitySPerM: 0.1 },
    [
      belt(20, 400, 500, 'before packing'),
      pack('pouches', [20, 140, 200], 80, { inserts: ['oxygen absorber'] }),
    ],
    find(['steel', 1.5], ['ss316', 2], ['bone_hard', 3]),
  ),
  twoLines: line(
    'Soup in jars and in foil pouches',
    { food: 'soup' },
    [
      pack('jars', [120, 75, 75], 400, {
        line: 'jars',
        outline: 'cylinder',
        parts: JAR,
        packsPerMin: 100,
        speedMPerMin: 30,
      }),
      pack('pouches', [25, 130, 190], 400, {
        line: 'pouches',
        parts: [foil(0.009), plastic('pet', 0.1, 'wrap')],
        packsPerMin: 60,
      }),
    ],
    find(['glass_container', 3], ['steel', 1.5], ['stone_any', 3]),
  ),
  wideVeg: line(
    'Frozen peas on 1200 mm belt',
    { food: 'peas_frozen', temperatureC: -18 },
    belt(40, 1200, 8000, 'belt', 40),
    find(['stone_any', 5], ['glass_any', 5], ['steel', 2], ['wood', 10], ['pe', 8]),
  ),
  pizza: line(
    'Frozen pizza on an aluminium foil tray',
    { food: 'ready_meal', temperatureC: -18, structure: 'inclusions' },
    pack('boxed pizza', [30, 260, 260], 400, {
      parts: [foil(0.05, 'tray'), CARTON],
      packsPerMin: 60,
      speedMPerMin: 35,
    }),
    find(['steel', 1.5], ['ss316', 2], ['glass_any', 3], ['bone_hard', 4]),
  ),
  jamJar: line(
    'Strawberry jam in glass jars',
    { food: 'jam' },
    pack('capped jars', [95, 70, 70], 340, {
      outline: 'cylinder',
      parts: JAR,
      packsPerMin: 150,
      speedMPerMin: 35,
    }),
    find(['glass_container', 2.5], ['ss316', 1.5], ['stone_any', 3]),
  ),
  honey: line(
    'Honey in glass jars',
    { food: 'honey', stiff: true },
    pack('capped jars', [90, 70, 70], 500, {
      outline: 'cylinder',
      parts: JAR,
      packsPerMin: 80,
      speedMPerMin: 25,
    }),
    find(['glass_container', 2.5], ['steel', 1.5], ['insect', 5]),
  ),
  nutsBulk: line(
    'Hazelnut kernels in bulk',
    { food: 'hazelnut' },
    belt(20, 600, 3000),
    find(['nut_shell', 5], ['stone_any', 4], ['glass_any', 4], ['steel', 1.5], ['pe', 6]),
  ),
  mince: line(
    'Minced beef 500 g MAP tray',
    { food: 'beef_mince', temperatureC: 2 },
    pack('trays', [45, 140, 190], 500, {
      parts: [plastic('pet', 0.5, 'tray'), plastic('pe', 0.06, 'lid')],
      packsPerMin: 80,
      speedMPerMin: 35,
    }),
    find(['steel', 1.5], ['ss316', 2.5], ['bone_hard', 4], ['pe', 6]),
  ),
  salmon: line(
    'Salmon fillets with pin bones',
    { food: 'salmon', temperatureC: 1 },
    belt(25, 300, 1500, 'trimmed fillets'),
    find(['bone_fish', 0.6, { shape: 'wire', lengthMm: 20 }], ['steel', 1.5], ['ss316', 2.5]),
    { labelClaims: ['boneless'] },
  ),
  rice1kg: line(
    'Rice 1 kg bags',
    { food: 'rice' },
    pack('bags', [50, 120, 180], 1000, { packsPerMin: 60, speedMPerMin: 25 }),
    find(['stone_any', 3], ['glass_any', 3], ['steel', 1.2], ['ss316', 1.5]),
  ),
  flourMill: line(
    'Flour after the mill, falling to bin',
    { food: 'flour' },
    fall(200, 12000),
    find(['steel', 1.5], ['ss316', 2], ['insect', 2], ['stone_any', 2]),
    {
      flow: [
        { step: 'milling', entersHere: ['steel', 'ss316'] },
        { step: 'sifting', upstreamControl: 'sieve 0.3 mm' },
      ],
    },
  ),
  biscuits: line(
    'Biscuits in carton',
    { food: 'biscuit' },
    pack('cartons', [60, 110, 200], 300, {
      parts: [CARTON, plastic('pp', 0.03, 'wrap')],
      packsPerMin: 60,
      speedMPerMin: 30,
    }),
    find(['steel', 1.2], ['ss316', 1.8], ['stone_any', 4], ['glass_any', 4]),
  ),
  cereal: line(
    'Corn flakes, bag in box',
    { food: 'cereal_flakes' },
    pack('boxes', [60, 190, 290], 375, {
      parts: [CARTON, plastic('pe', 0.06, 'wrap')],
      packsPerMin: 60,
      speedMPerMin: 30,
    }),
    find(['steel', 1.2], ['ss316', 2], ['stone_any', 3]),
  ),
  butter: line(
    'Butter 250 g in foil wrap',
    { food: 'butter', temperatureC: 6 },
    [pipe(76, 2000), pack('wrapped packs', [38, 65, 100], 250, { parts: [foil(0.008)], packsPerMin: 80 })],
    find(['steel', 1.2], ['ss316', 2], ['glass_any', 3]),
  ),
  berries: line(
    'Frozen strawberries 300 g bag',
    { food: 'strawberry_frozen', temperatureC: -18 },
    pack('bags', [40, 160, 200], 300, { packsPerMin: 50 }),
    find(['stone_any', 4], ['wood', 6], ['glass_any', 4], ['steel', 1.5]),
  ),
  sausageClip: line(
    'Liver sausage with aluminium clips',
    { food: 'sausage', temperatureC: 3 },
    [
      pipe(50, 1500, 'before the filler'),
      pack('clipped chubs', [45, 45, 200], 250, { inserts: ['aluminium clip'] }),
    ],
    find(['steel', 1.5], ['ss316', 2.5], ['bone_hard', 4]),
  ),
  babyPouch: line(
    'Fruit puree pouch for babies, foil laminate',
    { food: 'applesauce' },
    pack('spouted pouches', [30, 90, 150], 120, {
      parts: [foil(0.009), plastic('pet', 0.1, 'wrap')],
      packsPerMin: 80,
    }),
    find(['steel', 1], ['glass_any', 2], ['stone_any', 3], ['rubber_any', 4]),
    { consumer: 'infants', market: 'US', readyToEat: true },
  ),
  dicedChicken: line(
    'Frozen diced chicken with soft bone, 1 kg',
    { food: 'chicken_breast', temperatureC: -18, structure: 'granular', grainMm: 18, packing: 0.55 },
    pack('bags', [60, 180, 260], 1000),
    find(['bone_poultry_soft', 5], ['steel', 2], ['ss316', 2.5], ['cartilage', 5]),
  ),
  pasta: line(
    'Dry pasta 500 g bag',
    { food: 'pasta' },
    pack('bags', [55, 110, 240], 500, {
      parts: [plastic('pp', 0.04, 'wrap')],
      packsPerMin: 70,
      speedMPerMin: 35,
    }),
    find(['steel', 1.5], ['ss316', 2], ['glass_any', 4], ['pc', 5]),
  ),
} satisfies Record<string, BriefInput>
