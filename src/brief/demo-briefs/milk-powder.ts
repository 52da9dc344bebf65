import type { BriefInput } from '../../contract/brief.ts'

export const milkPowder: BriefInput = {
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
