/**
 * Speed of the x-ray observer as ratios measured in one run (npm run bench): the program's form against the
 * direct form of test/xray and against a numpy form of the same equations (fails where python3 has no numpy), and
 * the time of a whole comparison: five archetypes × eight contaminants × 64 draws with the choice of voltage.
 */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parseBrief } from '../../src/brief/index.ts'
import { machineSchema, type XrayMachine } from '../../src/contract/index.ts'
import { archetypes, figuresOf, granularTexture } from '../../src/reference/index.ts'
import { assessXray } from '../../src/xray/assess.ts'
import { buildOf } from '../../src/xray/beam/exposure.ts'
import { PRACTICE } from '../../src/xray/observer/practice.ts'
import {
  CHANCE_NINE_IN_TEN,
  differenceInBeam,
  displacedFood,
  objectIn,
  setScene,
  sizeAt,
} from '../../src/xray/observer/scene.ts'
import { materialAttenuation, packInBeam } from '../../src/xray/places/pack-in-beam.ts'
import { directSize, dPrimeDirect } from '../xray/direct-observer.ts'

const MACHINES = ['xray-single', 'xray-dual', 'xray-dual-fine', 'xray-side', 'xray-side-two-views']
const PIECES = [
  { material: 'ss316', shape: 'sphere' },
  { material: 'quartz', shape: 'sphere' },
  { material: 'glass_container', shape: 'sphere' },
  { material: 'ss316', shape: 'wire', lengthMm: 10 },
  { material: 'granite', shape: 'sphere' },
  { material: 'pvc', shape: 'sphere' },
  { material: 'aluminium', shape: 'flake', faceMm2: 40 },
  { material: 'bone_poultry', shape: 'sphere' },
]

function machineOf(id: string): XrayMachine {
  const figures = figuresOf(archetypes.get(id)!)
  return machineSchema.parse(figures) as XrayMachine
}

/** A pack of a food, with what must not be in it. */
function packOf(food: string) {
  const parsed = parseBrief({
    product: { food },
    points: [
      {
        heightMm: 45,
        widthMm: 160,
        lengthMm: 220,
        speedMPerMin: 40,
        parts: [{ material: 'pe', mm: 0.05, place: 'wrap' }],
      },
    ],
    contaminants: PIECES.map((piece) => ({ ...piece, mustFindMm: 3 })),
  })
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  return { contaminants: parsed.brief.contaminants, point: parsed.brief.points[0]! }
}
const { contaminants, point } = packOf('hazelnut')

/** Processor time, so that other work on the machine does not count, ms. */
function timed(work: () => void): number {
  const start = process.cpuUsage()
  work()
  const { user, system } = process.cpuUsage(start)
  return (user + system) / 1000
}
const median = (values: number[]) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!

// In grain the threshold of every filter comes from the tail of a bed, which solid food does not have.
for (const food of ['hazelnut', 'cheddar']) {
  const pack = packOf(food)
  const comparison = () => {
    for (const id of MACHINES) assessXray({ machine: machineOf(id), ...pack, prefix: id })
  }
  const first = timed(comparison)
  const warm = median(Array.from({ length: 15 }, () => timed(comparison)))
  console.log(
    `${food}, five archetypes × eight contaminants × 64 draws: first ${first.toFixed(0)} ms, warm median ${warm.toFixed(0)} ms`,
  )
}

const cases = ['xray-single', 'xray-dual', 'xray-dual-fine'].flatMap((id) => {
  const machine = machineOf(id)
  const build = buildOf(machine)
  const pack = packInBeam(point, build)
  const scene = setScene(build, point, pack, { kV: 70, mA: 8 }, PRACTICE)
  return contaminants
    .filter((c) => c.shape === 'sphere')
    .map((contaminant) => {
      const mu = materialAttenuation(contaminant.material)
      return { scene, pack, contaminant, mu, needed: scene.commonThreshold() + CHANCE_NINE_IN_TEN }
    })
})
const fastSizes = () =>
  cases.map(({ scene, contaminant, mu }) =>
    sizeAt(scene, objectIn(scene, contaminant, mu, scene.commonThreshold), CHANCE_NINE_IN_TEN),
  )
fastSizes()
const fast = median(Array.from({ length: 21 }, () => timed(fastSizes))) / cases.length
const direct =
  timed(() => {
    for (const { scene, pack, contaminant, mu, needed } of cases) {
      const food = displacedFood(pack, contaminant.placement)
      directSize(
        (d) =>
          dPrimeDirect(
            scene.channels,
            pack,
            scene.observer.imaging,
            { shape: 'sphere', muPerMm: mu, food },
            d,
          ),
        needed,
        scene.limitMm,
      )
    }
  }) / cases.length
console.log(
  `per size: ${(fast * 1000).toFixed(0)} µs; direct form ${direct.toFixed(1)} ms, ${(direct / fast).toFixed(0)} times slower`,
)

const folder = mkdtempSync(join(tmpdir(), 'bench-'))
const file = join(folder, 'cases.json')
writeFileSync(
  file,
  JSON.stringify(
    cases.map(({ scene, pack, contaminant, mu, needed }) => ({
      weights: scene.channels.weights.map((w) => [...w]),
      deltaMu: [...differenceInBeam(pack, mu, contaminant.placement)].slice(0, scene.channels.bins),
      foodMu: scene.channels.foodMu,
      noise: scene.channels.photonNoise.map((q, c) => q + scene.channels.readNoise[c]!),
      packing: pack.packing,
      grainMm: pack.grainMm,
      pathMm: pack.pathMm,
      unevennessMm: pack.unevennessMm,
      textureScale: PRACTICE.textureScale,
      kappa: PRACTICE.compositionResidual,
      objectPixelMm: scene.observer.imaging.objectPixelMm,
      blurPixels: scene.observer.imaging.blurPixels,
      limitMm: scene.limitMm,
      needed,
      texture: granularTexture,
    })),
  ),
)
const script = fileURLToPath(new URL('./numpy_form.py', import.meta.url))
const run = spawnSync('python3', [script, file], { encoding: 'utf8', maxBuffer: 1e8 })
rmSync(folder, { recursive: true })
if (run.status !== 0) {
  const why = run.stderr?.trim().split('\n').at(-1) ?? run.error
  console.error(
    `NO COMPARISON WITH NUMPY: python3 with numpy (Debian: python3-numpy) is needed and did not run: ${why}`,
  )
  process.exitCode = 1
} else {
  const { sizesMm, secondsPerSize } = JSON.parse(run.stdout) as {
    sizesMm: (number | null)[]
    secondsPerSize: number
  }
  const own = fastSizes()
  const worst = Math.max(
    ...own.map((size, i) =>
      size && sizesMm[i] ? Math.abs(size / sizesMm[i] - 1) : size === sizesMm[i] ? 0 : 1,
    ),
  )
  console.log(
    `numpy form, all sizes, frequencies and energies at once: ${(secondsPerSize * 1000).toFixed(1)} ms per size, ${((secondsPerSize * 1000) / fast).toFixed(0)} times slower; sizes differ by at most ${(worst * 100).toFixed(2)} %`,
  )
}
