import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { beforeAll, describe, expect, it } from 'vitest'

const biome = fileURLToPath(new URL('../node_modules/.bin/biome', import.meta.url))

const FORBIDDEN = [
  ['src/contract/new.ts', '../brief/index.ts'],
  ['src/reference/new.ts', '../contract/index.ts'],
  ['src/brief/new.ts', '../xray/assess.ts'],
  ['src/xray/new.ts', '../advice/facts.ts'],
  ['src/xray/new.ts', 'json-rules-engine'],
  ['src/coil/new.ts', '../xray/assess.ts'],
  ['src/intake/new.ts', '../brief/index.ts'],
  ['src/advice/new.ts', '../web/app.ts'],
  ['src/advice/new.ts', '../advise.ts'],
  ['src/advice/facts/new.ts', '../decide/judge.ts'],
  ['src/advice/facts/new.ts', '../say/words.ts'],
  ['src/advice/assess/new.ts', '../order/order.ts'],
  ['src/advice/book/new.ts', '../decide/decide.ts'],
  ['src/advice/decide/new.ts', '../say/words.ts'],
  ['src/advice/order/new.ts', '../say/words.ts'],
  ['src/advice/order/new.ts', '../change/change.ts'],
  ['src/advice/order/new.ts', '../missing/missing.ts'],
  ['src/advice/order/new.ts', '../found/fragment.ts'],
  ['src/advice/order/new.ts', '../../web/app.ts'],
  ['src/advice/order/new.ts', '../answer/answer.ts'],
  ['src/advice/answer/new.ts', '../change/change.ts'],
  ['src/advice/say/new.ts', '../answer/answer.ts'],
  ['src/advice/say/new.ts', '../decide/judge.ts'],
  ['src/advice/say/new.ts', '../order/order.ts'],
  ['src/advice/say/new.ts', '../change/change.ts'],
  ['src/advice/say/new.ts', '../../advise.ts'],
  ['views/new.tsx', '../src/xray/assess.ts'],
  ['src/charts/new.tsx', '../advice/facts.ts'],
  ['src/exercises/new.ts', '../web/app.ts'],
  ['src/compare/new.ts', '../../views/page.tsx'],
  ['src/runs/fit/new.ts', '../../advice/say/headline.ts'],
  ['src/runs/fit/new.ts', '../../advise.ts'],
  ['src/register/rate/new.ts', '../../advice/decide/decide.ts'],
  ['src/register/new.ts', '../checks/pieces.ts'],
  ['src/checks/new.ts', '../advice/facts/facts.ts'],
  ['src/checks/new.ts', '../../views/page.tsx'],
  ['src/report/new.ts', '../web/app.ts'],
  ['src/lines/new.ts', '../web/app.ts'],
  ['src/lines/new.ts', '../store/open.ts'],
  ['src/store/new.ts', '../brief/index.ts'],
  ['src/lines/read/new.ts', '../../../views/page.tsx'],
  ['src/xray/beam/new.ts', '../observer/observer.ts'],
  ['src/xray/observer/new.ts', '../trail/trail.ts'],
  ['src/xray/beam/new.ts', '../../advice/facts/facts.ts'],
  ['src/coil/piece/new.ts', '../food/brine.ts'],
  ['src/coil/decide/new.ts', '../trail/trail.ts'],
  ['src/separation/sieve/new.ts', '../magnet/magnet.ts'],
] as const

const ALLOWED = [
  ['src/runs/plan/new.ts', '../../xray/image/food/random.ts'],
  ['src/checks/new.ts', '../register/line/answers.ts'],
  ['src/register/new.ts', '../brief/entry.ts'],
  ['src/report/new.ts', '../../views/report/report-page.tsx'],
  ['src/xray/new.ts', '../reference/index.ts'],
  ['src/advice/new.ts', '../xray/assess.ts'],
  ['src/coil/food/new.ts', '../piece/piece.ts'],
  ['src/xray/observer/new.ts', '../beam/exposure.ts'],
  ['src/advice/order/new.ts', '../stages.ts'],
  ['src/advice/say/new.ts', '../stages.ts'],
  ['src/advice/change/new.ts', '../say/words.ts'],
  ['views/new.tsx', '../src/contract/index.ts'],
] as const

/** The file of a case: all cases stand in one house, so that the linter looks at them in one go. */
const fileOf = (path: string, index: number) => path.replace('/new.', `/new-${index}.`)
const cases = [...FORBIDDEN, ...ALLOWED].map(([path, from], index) => ({ file: fileOf(path, index), from }))
let said = ''

beforeAll(() => {
  const house = mkdtempSync(join(tmpdir(), 'walls-'))
  cpSync(new URL('../biome.json', import.meta.url), join(house, 'biome.json'))
  for (const { file, from } of cases) {
    mkdirSync(dirname(join(house, file)), { recursive: true })
    writeFileSync(join(house, file), `import { x } from '${from}'\nexport const y = x\n`)
  }
  const { stdout, stderr } = spawnSync(biome, ['lint', '--max-diagnostics=none', '.'], {
    cwd: house,
    encoding: 'utf8',
  })
  said = stdout + stderr
  rmSync(house, { recursive: true })
}, 60_000)

const isRefused = (path: string, index: number) =>
  said.split('\n').some((line) => line.includes(fileOf(path, index)) && line.includes('noRestrictedImports'))

describe('walls between the rooms', () => {
  it.each(FORBIDDEN.map(([path, from], index) => [path, from, index] as const))(
    '%s may not import %s',
    (path, _, index) => expect(isRefused(path, index)).toBe(true),
  )
  it.each(ALLOWED.map(([path, from], index) => [path, from, FORBIDDEN.length + index] as const))(
    '%s may import %s',
    (path, _, index) => expect(isRefused(path, index)).toBe(false),
  )
})
