import type { BriefInput } from '../../contract/brief.ts'

export const chocolate: BriefInput = {
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
