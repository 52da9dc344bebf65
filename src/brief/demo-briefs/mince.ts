import type { BriefInput } from '../../contract/brief.ts'

export const mince: BriefInput = {
  title: 'Beef mince, pumped to the former',
  market: 'EU',
  consumer: 'general',
  readyToEat: true,
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
