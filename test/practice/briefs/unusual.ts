import type { BriefInput } from '../../../src/contract/index.ts'
import { belt, CARTON, fall, find, foil, line, pack, pipe, plastic, TIN } from './everyday.ts'

/**
 * Less usual lines of the trade, told as a factory would tell them. Own inventions with plausible numbers (common
 * practice, no source); what an expert says of each was written before the program was asked.
 */
export const UNUSUAL = {
  butterBlock: line(
    'Unsalted butter 25 kg block in a lined carton, −18 °C',
    { food: 'butter', temperatureC: -18 },
    pack('blocks', [260, 260, 390], 25000, {
      parts: [CARTON, plastic('pe', 0.1, 'wrap')],
      packsPerMin: 5,
      speedMPerMin: 12,
    }),
    find(['steel', 4], ['ss316', 6]),
  ),
  sugarPipe: line(
    'Sugar powder blown through a pipe',
    { food: 'sugar', structure: 'powder' },
    pipe(80, 2500, 'blow line'),
    find(['steel', 1.2], ['ss316', 1.8], ['pe', 5]),
  ),
  drumsticks: line(
    'Chilled chicken drumsticks on a tray',
    { food: 'chicken_breast', temperatureC: 2, boneIn: true },
    pack('trays', [60, 180, 250], 800, {
      parts: [plastic('pp', 0.5, 'base'), plastic('pe', 0.05, 'lid')],
      inserts: ['absorbent pad'],
    }),
    find(['steel', 2.5], ['bone_poultry', 4], ['glass_any', 5]),
  ),
  slicedBread: line(
    'Sliced loaf, bag closed with a plastic clip',
    { food: 'bread' },
    pack('bags', [120, 120, 240], 800, {
      parts: [plastic('pp', 0.03, 'wrap')],
      inserts: ['plastic clip'],
      packsPerMin: 60,
      speedMPerMin: 30,
    }),
    find(['steel', 2], ['ss316', 3.5]),
  ),
  sardines: line(
    'Sardines in oil, aluminium can',
    { food: 'tuna_canned', structure: 'pieces-in-liquid' },
    pack('closed cans', [24, 60, 105], 125, {
      parts: [
        { material: 'aluminium', mm: 0.25, place: 'wall' },
        { material: 'aluminium', mm: 0.25, place: 'base' },
        { material: 'aluminium', mm: 0.25, place: 'lid' },
      ],
      packsPerMin: 200,
      speedMPerMin: 30,
    }),
    find(['steel', 1.5], ['ss316', 1.5], ['bone_fish', 1]),
  ),
  chocolateEggs: line(
    'Foil-wrapped chocolate eggs in a net closed with a metal clip',
    { food: 'chocolate', structure: 'granular', grainMm: 28, packing: 0.5 },
    pack('nets', [50, 90, 180], 250, {
      parts: [foil(0.012), plastic('pe', 0.3, 'wrap')],
      inserts: ['metal clip'],
      packsPerMin: 40,
    }),
    find(['steel', 2], ['ss316', 2], ['glass_any', 5]),
  ),
  saladBowl: line(
    'Salad bowl with a dressing sachet of metallised film and a fork',
    {
      food: 'custom',
      composition: { waterPct: 93, proteinPct: 1.5, fatPct: 0.5, carbohydratePct: 4, ashPct: 1 },
      structure: 'plates',
      densityGPerCm3: 0.98,
      grainMm: 0.5,
      packing: 0.15,
      temperatureC: 4,
    },
    pack('bowls', [70, 170, 170], 220, {
      parts: [plastic('pet', 0.4, 'base'), plastic('pet', 0.3, 'lid')],
      inserts: ['dressing sachet (metallised film)', 'plastic fork'],
      packsPerMin: 40,
    }),
    find(['steel', 2], ['stone_any', 4], ['insect', 6]),
  ),
  catFood: line(
    'Cat food, 100 g aluminium tray with a foil lid',
    { food: 'dog_food' },
    pack('trays', [30, 70, 95], 100, {
      parts: [
        { material: 'aluminium', mm: 0.1, place: 'base' },
        { material: 'aluminium', mm: 0.1, place: 'wall' },
        foil(0.05, 'lid'),
      ],
      packsPerMin: 200,
      speedMPerMin: 30,
    }),
    find(['steel', 1.5], ['ss316', 1.5], ['bone_any', 6]),
    { consumer: 'animals' },
  ),
  formulaDrop: line(
    'Infant formula with iron, drop above the can filler',
    { food: 'milk_powder', ironMgPerKg: 80 },
    fall(100, 3000),
    find(['steel', 1], ['ss316', 1.4], ['solder_snag', 1.5], ['pe', 3]),
    { consumer: 'infants' },
  ),
  peppercorns: line(
    'Black peppercorns, 25 kg sack',
    {
      food: 'custom',
      composition: { waterPct: 11, proteinPct: 11, fatPct: 4, carbohydratePct: 69, ashPct: 5 },
      structure: 'granular',
      grainMm: 4.5,
      densityGPerCm3: 1.0,
      packing: 0.58,
    },
    pack('sacks', [150, 420, 700], 25000, {
      parts: [plastic('carton', 0.2, 'wrap')],
      packsPerMin: 5,
      speedMPerMin: 15,
    }),
    find(['steel', 2.5], ['ss316', 3.5], ['stone_any', 4], ['nut_shell', 4]),
  ),
  iceSticks: line(
    'Ice cream on wooden sticks in metallised film, four lanes',
    { food: 'yoghurt', temperatureC: -20, densityGPerCm3: 0.6, structure: 'solid' },
    pack('wrapped sticks', [25, 60, 160], 70, {
      parts: [{ material: 'metallised_film', mm: 0.03, place: 'wrap' }],
      inserts: ['wooden stick'],
      lanes: 4,
      packsPerMin: 200,
      speedMPerMin: 20,
    }),
    find(['steel', 1.5], ['ss316', 2], ['wood', 10]),
  ),
  porkTray: line(
    'Chilled pork steaks on a tray',
    {
      food: 'custom',
      composition: { waterPct: 70, proteinPct: 21, fatPct: 8, carbohydratePct: 0, ashPct: 1 },
      structure: 'solid',
      densityGPerCm3: 1.05,
      conductivitySPerM: 0.5,
      temperatureC: 2,
      foodClass: 'meat-or-poultry',
    },
    pack('trays', [30, 180, 250], 500, {
      parts: [plastic('pp', 0.5, 'base'), plastic('pe', 0.05, 'lid')],
    }),
    find(['steel', 2], ['ss316', 2.5], ['bone_hard', 4], ['pe', 10]),
  ),
  cheeseSlices: line(
    'Cheese slices 200 g',
    { food: 'cheddar', temperatureC: 4 },
    pack('packs', [20, 110, 160], 200, { packsPerMin: 80, speedMPerMin: 25 }),
    find(['steel', 1.5], ['ss316', 2], ['glass_any', 3]),
  ),
  saltSack: line(
    'Table salt, 25 kg sack',
    {
      food: 'custom',
      composition: { waterPct: 0.1, proteinPct: 0, fatPct: 0, carbohydratePct: 0, ashPct: 99.9 },
      structure: 'powder',
      densityGPerCm3: 2.16,
      grainMm: 0.4,
      packing: 0.58,
    },
    [
      fall(150, 6000),
      pack('sacks', [110, 380, 600], 25000, {
        parts: [plastic('pe', 0.15, 'wrap')],
        packsPerMin: 6,
        speedMPerMin: 15,
      }),
    ],
    find(['steel', 1.5], ['ss316', 2], ['stone_any', 4]),
  ),
  carrots: line(
    'Washed carrots on a belt of 1500 mm',
    { food: 'potato', temperatureC: 10 },
    belt(60, 1500, 15000, 'grading belt', 30),
    find(['stone_any', 8], ['steel', 4], ['wood', 10]),
  ),
  teaCarton: line(
    'Knotted tea bags without staples, carton in clear film',
    { food: 'oats', structure: 'granular', grainMm: 1 },
    pack('cartons', [65, 75, 160], 100, {
      parts: [CARTON, plastic('pp', 0.02, 'wrap')],
      inserts: ['cotton string and paper tag'],
      packsPerMin: 60,
    }),
    find(['steel', 1.5], ['ss316', 2.2]),
  ),
  nutsAbsorber: line(
    'Walnuts in a metallised pouch with an oxygen absorber',
    { food: 'walnut' },
    [
      belt(40, 500, 1200, 'inspection belt'),
      pack('pouches', [50, 150, 220], 400, {
        parts: [{ material: 'metallised_film', mm: 0.09, place: 'wrap' }],
        inserts: ['oxygen absorber'],
      }),
    ],
    find(['steel', 1.5], ['ss316', 2], ['stone_any', 3], ['nut_shell', 5]),
  ),
  twoPacks: line(
    'Frozen peas in bags on one line and in cartons on the other',
    { food: 'peas_frozen', temperatureC: -18 },
    [
      pack('bags', [50, 180, 250], 1000, { line: 'retail' }),
      pack('cartons', [180, 280, 390], 10000, {
        line: 'catering',
        parts: [CARTON, plastic('pe', 0.05, 'wrap')],
        packsPerMin: 8,
        speedMPerMin: 15,
      }),
    ],
    find(['steel', 2.5], ['ss316', 3], ['stone_any', 5], ['wood', 8]),
  ),
  biscuitBand: line(
    'Biscuits on the cooling belt, 1000 mm wide',
    { food: 'biscuit' },
    belt(15, 1000, 2000, 'cooling belt', 20),
    find(['steel', 1.5], ['ss316', 2.5], ['glass_any', 4]),
  ),
  milkPipe: line(
    'Milk pumped to the filler through a strainer',
    {
      food: 'custom',
      composition: { waterPct: 88, proteinPct: 3.4, fatPct: 3.6, carbohydratePct: 4.7, ashPct: 0.7 },
      structure: 'liquid',
      densityGPerCm3: 1.03,
      conductivitySPerM: 0.45,
      temperatureC: 6,
    },
    pipe(63, 8000, 'filler feed'),
    find(['steel', 2], ['ss316', 2.5], ['rubber_any', 3]),
    { flow: [{ step: 'filler feed', upstreamControl: 'strainer 0.8 mm' }] },
  ),
  pineappleCan: line(
    'Pineapple rings in juice, steel can',
    { food: 'applesauce', structure: 'pieces-in-liquid' },
    pack('closed cans', [112, 83, 83], 565, {
      outline: 'cylinder',
      parts: TIN,
      packsPerMin: 250,
      speedMPerMin: 45,
    }),
    find(['steel', 2], ['ss316', 2], ['stone_any', 5], ['rubber_any', 8]),
  ),
  proteinBars: line(
    'Protein bars in metallised film',
    { food: 'chocolate', structure: 'solid' },
    pack('bars', [22, 40, 130], 60, {
      parts: [{ material: 'metallised_film', mm: 0.04, place: 'wrap' }],
      packsPerMin: 250,
      speedMPerMin: 40,
    }),
    find(['steel', 1.2], ['ss316', 1.8], ['glass_any', 3]),
  ),
} satisfies Record<string, BriefInput>
