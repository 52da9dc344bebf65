/**
 * All that is tested (npm test). A browser waits for much of its time, so its files run beside the rest, which gives way
 * to them; types and lint are checked beside both. Words behind the command go to one run of vitest instead, as in
 * `npm test -- --project rest`.
 */
import { spawn } from 'node:child_process'
import { setPriority } from 'node:os'

interface Part {
  readonly name: string
  readonly command: readonly [string, ...string[]]
  /** Shown as it comes; what others say is shown whole when they end. */
  readonly live?: boolean
  /** Added to the priority of the command itself: the higher, the sooner it gives way. */
  readonly givesWay?: number
}

const words = process.argv.slice(2)
const vitest = (name: string, ...more: string[]): Part => ({
  name,
  command: ['vitest', 'run', ...more],
})

const CHECKS: readonly Part[] = [
  { name: 'types', command: ['tsc', '--noEmit'], givesWay: 5 },
  { name: 'lint', command: ['biome', 'check', '--error-on-warnings', '.'], givesWay: 5 },
]
const TESTS: readonly Part[] =
  words.length > 0
    ? [{ ...vitest('tests', ...words), live: true }]
    : [
        vitest('browser', '--project', 'browser'),
        { ...vitest('rest', '--project', 'rest'), live: true, givesWay: 3 },
      ]

/** Each run of vitest leaves a report of its own beside the one that was asked for: here.json, here-browser.json. */
function reportOf(name: string): Record<string, string> {
  const asked = process.env.GRITWISE_TEST_REPORT
  return asked && name === 'browser'
    ? { GRITWISE_TEST_REPORT: asked.replace(/(\.json)?$/, '-browser.json') }
    : {}
}

/** Runs a part to its end: whether it held. */
function run({ name, command: [program, ...rest], live = false, givesWay = 0 }: Part): Promise<boolean> {
  return new Promise((resolve) => {
    const child = spawn(program, rest, {
      stdio: ['ignore', live ? 'inherit' : 'pipe', live ? 'inherit' : 'pipe'],
      env: { ...process.env, ...reportOf(name) },
    })
    if (child.pid && givesWay > 0) setPriority(child.pid, givesWay)
    const said: Buffer[] = []
    child.stdout?.on('data', (part: Buffer) => said.push(part))
    child.stderr?.on('data', (part: Buffer) => said.push(part))
    child.on('error', (error) => said.push(Buffer.from(`${error.message}\n`)))
    child.on('close', (code) => {
      if (said.length > 0) process.stdout.write(`\n== ${name}\n${Buffer.concat(said)}`)
      resolve(code === 0)
    })
  })
}

const began = performance.now()
// Without checking types, which another part does for all files.
const built =
  (await run({ name: 'build', command: ['tsc', '-p', 'src', '--noCheck'] })) &&
  (await run({ name: 'build', command: ['node', 'src/copy-assets.mjs'] }))
const parts = built ? [...CHECKS, ...TESTS] : []
const held = await Promise.all(parts.map(run))
const broken = built ? parts.filter((_, k) => !held[k]).map(({ name }) => name) : ['build']
const seconds = ((performance.now() - began) / 1000).toFixed(0)
console.log(
  broken.length === 0
    ? `\n${parts.map(({ name }) => name).join(', ')} hold (${seconds} s)`
    : `\nbroken: ${broken.join(', ')} (${seconds} s)`,
)
process.exitCode = broken.length === 0 ? 0 : 1
