/**
 * Proportions of food pieces for the drawn packs. Only proportions, spread and lie are used: the size comes
 * from the brief's grain. Typical dimensions in mm from memory (mark M); spread is the standard deviation of
 * the diameters over their mean; tilt 1 lies at random, 0 flat on its largest face (judgement).
 */
export interface GrainShape {
  readonly kind: 'ellipsoid' | 'bar'
  /** Ellipsoid: three axes, longest first. Bar: length, diameter, diameter. */
  readonly axesMm: readonly [number, number, number]
  readonly spread: number
  readonly tilt: number
  /** Bar: its ends are round, as those of a pod. */
  readonly roundEnds?: boolean
  /** Ellipsoid: how much of it looks like the fruit or kernel it stands for; none unless given. */
  readonly form?: GrainForm
}

/** Drawn on an ellipsoid without a change of how much food there is. */
export interface GrainForm {
  /** Its cross-section narrows along its length: by this share at one end, and widens as much at the other. */
  readonly taper: number
  /** The share its middle is emptier than the mean of it: a hollow core. */
  readonly hollow: number
  /** Width of the hollow core in half widths of the grain. */
  readonly coreWidth: number
  /** Seeds in its skin: the share by which each is denser than the fruit there; none unless given. */
  readonly skinSeeds?: number
}

const ellipsoid = (a: number, b: number, c: number, spread: number, tilt = 0.7): GrainShape => ({
  kind: 'ellipsoid',
  axesMm: [a, b, c],
  spread,
  tilt,
})
const bar = (length: number, diameter: number, spread: number, tilt = 0.4): GrainShape => ({
  kind: 'bar',
  axesMm: [length, diameter, diameter],
  spread,
  tilt,
})

const SHAPES: Readonly<Record<string, GrainShape>> = {
  almond: { ...ellipsoid(22, 13, 8, 0.08), form: { taper: 0.28, hollow: 0, coreWidth: 0.4 } },
  hazelnut: { ...ellipsoid(14, 13, 12.5, 0.08, 1), form: { taper: 0.24, hollow: 0.62, coreWidth: 0.3 } },
  walnut: ellipsoid(18, 12, 8, 0.3),
  cashew: ellipsoid(28, 15, 11, 0.1),
  peanut: ellipsoid(14, 8.5, 8, 0.1),
  raisin: ellipsoid(13, 8, 6, 0.2),
  cranberry_dried: ellipsoid(13, 10, 6, 0.2),
  blueberry_frozen: ellipsoid(11.5, 11, 10.5, 0.12, 1),
  strawberry_frozen: {
    ...ellipsoid(36, 28, 26, 0.15, 0.35),
    form: { taper: 0.5, hollow: 0.22, coreWidth: 0.42, skinSeeds: 0.3 },
  },
  mozzarella_shred: bar(25, 2.5, 0.25),
  corn_frozen: ellipsoid(10, 8, 5, 0.1),
  beans_frozen: { ...bar(34, 7, 0.15, 0.2), roundEnds: true },
  broccoli_frozen: ellipsoid(30, 22, 18, 0.3),
  potato: ellipsoid(70, 58, 50, 0.12),
  fries_frozen: bar(55, 8, 0.2, 0.3),
  rice: ellipsoid(6.5, 2.2, 2, 0.08, 0.5),
  sugar: ellipsoid(0.7, 0.6, 0.5, 0.25, 1),
  pasta: bar(22, 7, 0.05),
  oats: ellipsoid(7, 4.5, 1.2, 0.2, 0.4),
  olive: ellipsoid(22, 17, 16, 0.08),
  prune: ellipsoid(33, 26, 20, 0.15),
  instant_coffee: ellipsoid(2, 1.5, 1.2, 0.3, 1),
  biscuit: bar(7, 60, 0.01, 0.04),
  cereal_flakes: bar(1.2, 18, 0.2, 0.6),
  potato_crisps: bar(1.4, 48, 0.1, 0.5),
  peas_frozen: ellipsoid(8.2, 8, 7.8, 0.1, 1),
  dog_food: ellipsoid(14, 12, 9, 0.15),
  lentil: ellipsoid(5.5, 5.3, 2.6, 0.08, 0.5),
}

/** A food that is not listed: plates become round flat pieces, everything else slightly long grains. */
export function grainShape(food: string, structure: string): GrainShape {
  const known = SHAPES[food]
  if (known) return known
  return structure === 'plates' ? bar(1, 12, 0.1, 0.5) : ellipsoid(1.15, 1, 0.87, 0.12, 1)
}
