import type { BriefInput } from '../../src/contract/index.ts'

/** A small line for trials: one point, one machine, a ball and a wire. */
export const bagOfKernels: BriefInput = {
  title: 'Hazelnut kernels, 500 g pillow bag',
  product: { food: 'hazelnut' },
  points: [
    {
      name: 'after packing',
      heightMm: 30,
      widthMm: 160,
      lengthMm: 180,
      massG: 500,
      speedMPerMin: 40,
      packsPerMin: 80,
      falseRejectsPerPack: 0.001,
    },
  ],
  contaminants: [
    { material: 'quartz', shape: 'sphere', mustFindMm: 4 },
    { material: 'ss316', shape: 'wire', lengthMm: 10, mustFindMm: 0.6 },
  ],
  equipment: ['xray-single'],
}

/** The same trial with ten pieces at each of six sizes, and a clean run. */
export const TRIAL_CSV = `equipment;setting;material;sizeMm;runs;found;date
xray-single;12;quartz;1,9;10;0;2026-11-27
xray-single;12;quartz;2,1;10;2;2026-11-27
xray-single;12;quartz;2,3;10;5;2026-11-27
xray-single;12;quartz;2,5;10;8;2026-11-27
xray-single;12;quartz;2,7;10;9;2026-11-27
xray-single;12;quartz;3;10;10;2026-11-27
xray-single;12;;;3000;1;2026-11-27
`
