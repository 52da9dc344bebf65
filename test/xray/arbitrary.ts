/** Random but possible briefs for property tests: one machine, one contaminant, every value explicit. */
export const foods = [
  'almond',
  'rice',
  'beans_frozen',
  'cranberry_dried',
  'cheddar',
  'chicken_breast',
  'butter',
  'chocolate',
  'sugar',
] as const

export const materialsToFind = [
  'ss316',
  'glass_container',
  'quartz',
  'bone_hard',
  'aluminium',
  'pvc',
  'ptfe',
  'granite',
] as const

const gos = { scintillator: 'gos', swank: 0.8, electronsPerKeV: 20, noiseElectrons: 1500 } as const

export const layers = [
  [{ ...gos, mgPerCm2: 110 }],
  [{ scintillator: 'csi', swank: 0.85, electronsPerKeV: 22, noiseElectrons: 1200, mgPerCm2: 180 } as const],
  [
    { ...gos, mgPerCm2: 45 },
    { ...gos, copperBeforeMm: 0.6, mgPerCm2: 200, swank: 0.75, electronsPerKeV: 12 },
  ],
] as const

export interface Case {
  food: string
  heightMm: number
  speedMPerMin: number
  pixelMm: number
  kV: number
  layers: (typeof layers)[number]
  material: string
  shape: 'sphere' | 'wire' | 'flake'
  placement: 'inside' | 'outside'
  falseRejectsPerPack?: number
}

/** A brief of one case. */
export function briefOf(one: Case) {
  return {
    title: 'random case',
    product: { food: one.food, unevennessMm: 0.5 },
    points: [
      {
        name: 'here',
        stage: 'packed',
        heightMm: one.heightMm,
        widthMm: 150,
        lengthMm: 200,
        parts: [{ material: 'pe', mm: 0.06, place: 'wrap' }],
        speedMPerMin: one.speedMPerMin,
        falseRejectsPerPack: one.falseRejectsPerPack ?? 0.001,
      },
    ],
    contaminants: [
      {
        material: one.material,
        shape: one.shape,
        placement: one.placement,
        mustFindMm: 3,
        ...(one.shape === 'wire' ? { lengthMm: 12 } : {}),
        ...(one.shape === 'flake' ? { faceMm2: 30 } : {}),
      },
    ],
    equipment: [
      {
        id: 'random machine',
        family: 'xray',
        kV: one.kV,
        mA: 6,
        pixelMm: one.pixelMm,
        sourceToDetectorMm: 500,
        magnification: 1.2,
        filterAlMm: 1,
        windowBeMm: 1,
        anodeAngleDeg: 20,
        blurPixels: 0.3,
        beam: 'down',
        detectorLayers: one.layers,
      },
    ],
  }
}
