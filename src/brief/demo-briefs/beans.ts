import type { BriefInput } from '../../contract/brief.ts'

export const beans: BriefInput = {
  title: 'Green beans, frozen, deep bed',
  market: 'EU',
  consumer: 'general',
  readyToEat: true,
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
