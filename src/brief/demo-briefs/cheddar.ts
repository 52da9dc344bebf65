import type { BriefInput } from '../../contract/brief.ts'

export const cheddar: BriefInput = {
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
