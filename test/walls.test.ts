import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'

const biome = fileURLToPath(new URL('../node_modules/.bin/biome', import.meta.url))
let house = ''

beforeAll(() => {
  house = mkdtempSync(join(tmpdir(), 'walls-'))
  cpSync(new URL('../biome.json', import.meta.url), join(house, 'biome.json'))
})
afterAll(() => rmSync(house, { recursive: true }))

/** What the linter says of an empty house with one file in it that has one import. */
function lint(path: string, from: string): string {
  const file = join(house, path)
  mkdirSync(dirname(file), { recursive: true })
  writeFileSync(file, `import { x } from '${from}'\nexport const y = x\n`)
  const { stdout, stderr } = spawnSync(biome, ['lint', path], { cwd: house, encoding: 'utf8' })
  rmSync(file)
  return stdout + stderr
}

describe('walls between the rooms', () => {
  it.each([
    ['src/contract/new.ts', '../brief/index.ts'],
    ['src/reference/new.ts', '../contract/index.ts'],
    ['src/brief/new.ts', '../xray/assess.ts'],
    ['src/xray/new.ts', '../advice/facts.ts'],
    ['src/xray/new.ts', 'json-rules-engine'],
    ['src/coil/new.ts', '../xray/assess.ts'],
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
    ['src/advice/say/new.ts', '../decide/judge.ts'],
    ['src/advice/say/new.ts', '../order/order.ts'],
    ['src/advice/say/new.ts', '../change/change.ts'],
    ['src/advice/say/new.ts', '../../advise.ts'],
    ['views/new.tsx', '../src/xray/assess.ts'],
    ['src/charts/new.tsx', '../advice/facts.ts'],
    ['src/exercises/new.ts', '../web/app.ts'],
    ['src/compare/new.ts', '../../views/page.tsx'],
    ['src/xray/beam/new.ts', '../observer/observer.ts'],
    ['src/xray/observer/new.ts', '../trail/trail.ts'],
    ['src/xray/beam/new.ts', '../../advice/facts/facts.ts'],
    ['src/coil/piece/new.ts', '../food/brine.ts'],
    ['src/coil/decide/new.ts', '../trail/trail.ts'],
    ['src/separation/sieve/new.ts', '../magnet/magnet.ts'],
  ])('%s may not import %s', (path, from) => {
    expect(lint(path, from)).toContain('noRestrictedImports')
  })

  it.each([
    ['src/xray/new.ts', '../reference/index.ts'],
    ['src/advice/new.ts', '../xray/assess.ts'],
    ['src/coil/food/new.ts', '../piece/piece.ts'],
    ['src/xray/observer/new.ts', '../beam/exposure.ts'],
    ['src/advice/order/new.ts', '../stages.ts'],
    ['src/advice/say/new.ts', '../stages.ts'],
    ['src/advice/change/new.ts', '../say/words.ts'],
    ['views/new.tsx', '../src/contract/index.ts'],
  ])('%s may import %s', (path, from) => {
    expect(lint(path, from)).not.toContain('noRestrictedImports')
  })
})
