import type { BriefInput } from '../../../src/contract/index.ts'
import { CARTON, find, foil, line, pack, pipe, plastic } from './everyday.ts'

const glass = (mm: number, place: 'wall' | 'base') => ({ material: 'glass_container', mm, place }) as const

/**
 * Lines that everybody in the trade knows the answer of. Own inventions with plausible numbers (common practice, no
 * source); what an expert says of each was written before the program was asked.
 */
export const KNOWN = {
  sweets: line(
    'Boiled sweets twisted into metallised film, 500 g bag',
    { food: 'sugar', structure: 'granular', grainMm: 22, packing: 0.55 },
    pack('bags', [60, 180, 220], 500, {
      parts: [{ material: 'metallised_film', mm: 0.02, place: 'wrap' }],
      packsPerMin: 40,
    }),
    find(['steel', 2], ['ss316', 3], ['glass_any', 5]),
  ),
  spaghetti: line(
    'Dry spaghetti in a carton',
    { food: 'pasta', structure: 'solid' },
    pack('cartons', [30, 85, 260], 500, { parts: [CARTON], packsPerMin: 90, speedMPerMin: 36 }),
    find(['steel', 1.2], ['ss316', 1.5], ['glass_any', 4]),
  ),
  peasBag: line(
    'Frozen peas, 1 kg bag',
    { food: 'peas_frozen', temperatureC: -18 },
    pack('bags', [55, 190, 280], 1000, { packsPerMin: 50 }),
    find(['steel', 2], ['ss316', 3], ['stone_any', 5], ['wood', 10]),
  ),
  ketchup: line(
    'Ketchup in upright plastic bottles with a foil seal',
    { food: 'tomato_sauce' },
    pack('upright bottles', [180, 70, 90], 500, {
      parts: [plastic('pp', 0.8, 'wall'), foil(0.03, 'lid'), plastic('pp', 2, 'closure')],
      packsPerMin: 80,
    }),
    find(['steel', 2], ['ss316', 2.5], ['glass_any', 4]),
  ),
  oilPipe: line(
    'Sunflower oil pumped to the filler',
    {
      food: 'custom',
      composition: { waterPct: 0, proteinPct: 0, fatPct: 100, carbohydratePct: 0, ashPct: 0 },
      structure: 'liquid',
      densityGPerCm3: 0.92,
    },
    pipe(50, 4000, 'filling line'),
    find(['steel', 0.8], ['ss316', 1.2]),
  ),
  ironFlakes: line(
    'Corn flakes with added iron, inner bag',
    { food: 'cereal_flakes', ironMgPerKg: 80 },
    pack('bags', [80, 190, 280], 500, { packsPerMin: 60 }),
    find(['steel', 1.5], ['ss316', 2]),
  ),
  fishPortions: line(
    'Frozen breaded fish in a carton',
    { food: 'cod', temperatureC: -18 },
    pack('cartons', [35, 120, 200], 400, { parts: [CARTON], packsPerMin: 60 }),
    find(['steel', 1.5], ['ss316', 2], ['bone_fish', 1]),
  ),
  coffeeBrick: line(
    'Coffee, vacuum brick in aluminium laminate',
    { food: 'instant_coffee', structure: 'powder' },
    pack('bricks', [60, 85, 160], 500, {
      parts: [foil(0.009), plastic('pe', 0.08, 'wrap')],
      packsPerMin: 60,
    }),
    find(['steel', 1.5], ['ss316', 2], ['stone_any', 4]),
  ),
  ham: line(
    'Sliced ham, 200 g vacuum pack',
    { food: 'ham', temperatureC: 4 },
    pack('packs', [15, 130, 180], 200, { packsPerMin: 60 }),
    find(['steel', 1.5], ['ss316', 2.5], ['pe', 5]),
  ),
  gherkins: line(
    'Gherkins in glass jars with a steel lid',
    { food: 'olive', structure: 'pieces-in-liquid' },
    pack('capped jars', [130, 78, 78], 550, {
      outline: 'cylinder',
      parts: [glass(2.5, 'wall'), glass(4, 'base'), { material: 'steel', mm: 0.2, place: 'lid' }],
      packsPerMin: 150,
      speedMPerMin: 30,
    }),
    find(['glass_container', 3], ['steel', 2]),
  ),
  loafPlastic: line(
    'Loaf in a bag, pieces of a polypropylene tray',
    { food: 'bread' },
    pack('bags', [120, 120, 240], 800, {
      parts: [plastic('pp', 0.03, 'wrap')],
      packsPerMin: 60,
      speedMPerMin: 30,
    }),
    find(['pp', 5], ['steel', 2]),
  ),
  loafTwistTie: line(
    'Loaf in a bag closed with a twist tie of unknown make',
    { food: 'bread' },
    pack('bags', [120, 120, 240], 800, { inserts: ['twist tie'], packsPerMin: 60, speedMPerMin: 30 }),
    find(['steel', 2]),
  ),
} satisfies Record<string, BriefInput>
