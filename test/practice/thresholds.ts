/**
 * Thresholds a machine is taught on simulated clean packs beside the computed ones (npm run thresholds [packs]): the
 * evidence for c, the share of the computed point at which a taught threshold stands. Each bed has several relaxed
 * tiles, each pack a cut of its own and photons of its own. Packs rejected at 5 % asked are counted; the threshold for
 * one in a thousand is read from a Gumbel tail fitted to the packs' largest answers.
 */
import { parseBrief } from '../../src/brief/index.ts'
import { textTable } from '../../src/commands/text/text-table.ts'
import { machineSchema, type XrayMachine } from '../../src/contract/index.ts'
import { gumbelUpper } from '../../src/numerics/gumbel.ts'
import { normalUpperQuantile } from '../../src/numerics/normal.ts'
import { archetypes, figuresOf } from '../../src/reference/index.ts'
import { buildOf } from '../../src/xray/beam/exposure.ts'
import { settingAt } from '../../src/xray/beam/settings.ts'
import { CARD_BED } from '../../src/xray/image/food/grain-tile.ts'
import { drawPack } from '../../src/xray/image/pack/drawn-pack.ts'
import { exposePack } from '../../src/xray/image/pack/exposed-pack.ts'
import { takeRadiograph } from '../../src/xray/image/pack/radiograph.ts'
import { foodCurve } from '../../src/xray/image/read/cancel-food.ts'
import { transformPicture } from '../../src/xray/image/read/picture-transform.ts'
import { readArea } from '../../src/xray/image/read/read-area.ts'
import { scoreMaps } from '../../src/xray/image/read/score-map.ts'
import { templateOf } from '../../src/xray/image/read/template.ts'
import { bedPoint } from '../../src/xray/observer/grain-threshold.ts'
import { BED_FACTOR, IDEAL } from '../../src/xray/observer/practice.ts'
import { displacedFood, setScene } from '../../src/xray/observer/scene.ts'
import { bankIn, quartzIn } from '../../src/xray/observer/threshold.ts'
import { modelNoise } from './simulated-chance.ts'

const BEDS = [
  { food: 'almond', grainMm: 10, heightMm: 20, machine: 'xray-single', kV: 50 },
  { food: 'almond', grainMm: 12, heightMm: 65, machine: 'xray-single', kV: 50 },
  { food: 'almond', grainMm: 10, heightMm: 20, machine: 'xray-dual', kV: 90 },
  { food: 'almond', grainMm: 12, heightMm: 65, machine: 'xray-dual', kV: 90 },
  { food: 'hazelnut', grainMm: 13, heightMm: 45, machine: 'xray-single', kV: 50 },
  { food: 'beans_frozen', grainMm: 9, heightMm: 40, machine: 'xray-single', kV: 50 },
  { food: 'cranberry_dried', grainMm: 10, heightMm: 45, machine: 'xray-dual', kV: 80 },
  { food: 'rice', grainMm: 3.2, heightMm: 40, machine: 'xray-single', kV: 60 },
] as const
const TILES = 8
const ASKED = 0.05
const RARE = 0.001

export interface Taught {
  readonly label: string
  readonly packs: number
  readonly z: number
  /** Points of the computed tail (c = 1) for 5 % and for one in a thousand: the largest over the bank. */
  readonly computed: readonly [number, number]
  /** The same of the simulated packs: counted, and by the fitted tail. */
  readonly taught: readonly [number, number]
  /** Share of packs rejected at the threshold computed with c for 5 % asked. */
  readonly rejected: number
  readonly rejectedAtZ: number
}

function machineOf(id: string): XrayMachine {
  return machineSchema.parse(figuresOf(archetypes.get(id)!)) as XrayMachine
}

/** Quantile above which a share of the values lies. */
function upper(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => b - a)
  const at = share * sorted.length - 0.5
  const low = Math.min(sorted.length - 1, Math.max(0, Math.floor(at)))
  const high = Math.min(sorted.length - 1, low + 1)
  return sorted[low]! + (sorted[high]! - sorted[low]!) * Math.max(0, at - low)
}

export function taughtOn(bed: (typeof BEDS)[number], packs: number, firstSeed = 1): Taught {
  const parsed = parseBrief({
    product: { food: bed.food, grainMm: bed.grainMm },
    points: [
      { heightMm: bed.heightMm, widthMm: 120, lengthMm: 160, speedMPerMin: 40, falseRejectsPerPack: ASKED },
    ],
    contaminants: [{ material: 'quartz', placement: 'inside' }],
  })
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  const point = parsed.brief.points[0]!
  const machine = machineOf(bed.machine)
  const build = buildOf(machine)
  const setting = settingAt(machine, build, bed.kV, point.speedMPerMin)
  const exposed = exposePack(machine, build, point, setting)
  const curve = foodCurve(exposed)
  const scene = setScene(build, point, exposed.pack, setting, IDEAL)
  const inverse = modelNoise(exposed, curve)
  const seen = quartzIn(scene.observer, displacedFood(exposed.pack, 'inside')!)
  const kind = { contaminant: 0, seen, looksLikeVoid: false }
  const end = Math.SQRT1_2 / exposed.objectPixelMm
  const filters = bankIn(scene.observer).map((size) => templateOf(exposed, curve, kind, size, 0, end))
  const largest: number[][] = []
  const variances = filters.map(() => 0)
  let positions = 0
  for (let k = 0; k < packs; k++) {
    const pack = drawPack(point, build.beam, firstSeed + k, { ...CARD_BED, seed: 100 + (k % TILES) })
    const area = readArea(pack.view, takeRadiograph(exposed, pack, []), curve)
    positions = area.readPixels / 4
    const maps = scoreMaps(area, area.mask, transformPicture(exposed, area), filters, inverse)
    largest.push(maps.map(({ scores, sigma }) => sigma * scores.reduce((most, v) => Math.max(most, v), 0)))
    maps.forEach(({ sigma }, i) => {
      variances[i]! += sigma ** 2 / packs
    })
  }
  const most = largest.map((row) => Math.max(...row.map((v, i) => v / Math.sqrt(variances[i]!))))
  const point1 = (share: number) => {
    const tail = share / positions
    const z = normalUpperQuantile(tail)
    return Math.max(...bankIn(scene.observer).map((size) => bedPoint(scene.observer, seen, size, tail, z)))
  }
  const z = normalUpperQuantile(ASKED / positions)
  const computed = [point1(ASKED), point1(RARE)] as const
  const threshold = Math.max(z, BED_FACTOR * computed[0])
  return {
    label: `${bed.food} ${bed.heightMm} mm, ${bed.machine} ${bed.kV} kV`,
    packs,
    z,
    computed,
    taught: [upper(most, ASKED), gumbelUpper(most, RARE)],
    rejected: most.filter((v) => v > threshold).length / packs,
    rejectedAtZ: most.filter((v) => v > z).length / packs,
  }
}

if (process.argv[1]?.endsWith('thresholds.ts')) {
  const packs = Number(process.argv[2] ?? 400)
  const percent = (v: number) => `${(100 * v).toFixed(1)} %`
  const rows: string[][] = []
  const shares: number[] = []
  for (const bed of BEDS) {
    const row = taughtOn(bed, packs)
    const share = [row.taught[0] / row.computed[0], row.taught[1] / row.computed[1]]
    shares.push(share[0]!)
    rows.push([
      row.label,
      row.z.toFixed(2),
      `${row.taught[0].toFixed(2)} / ${row.computed[0].toFixed(2)} = ${share[0]!.toFixed(2)}`,
      percent(row.rejectedAtZ),
      percent(row.rejected),
      `${row.taught[1].toFixed(2)} / ${row.computed[1].toFixed(2)} = ${share[1]!.toFixed(2)}`,
    ])
    console.error(rows.at(-1)!.join(' | '))
  }
  console.log(
    textTable(
      [
        'bed and machine',
        'z',
        'taught / computed at 5 %',
        'rejected at z',
        `at ${BED_FACTOR}`,
        'at 0.1 % (fitted tail)',
      ],
      rows,
    ),
  )
  console.log(
    `${packs} clean packs of each bed from ${TILES} relaxed tiles; 5 % asked is counted, 0.1 % is a fitted Gumbel tail`,
  )
  console.log(
    `mean share at 5 %: ${(shares.reduce((sum, v) => sum + v, 0) / shares.length).toFixed(3)}; c = ${BED_FACTOR}`,
  )
}
