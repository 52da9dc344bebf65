import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import { demos } from '../../src/brief/demos.ts'
import { reportCommand } from '../../src/commands/report.ts'
import type { BriefInput } from '../../src/contract/index.ts'
import { run } from './run.ts'

const report = (...args: string[]) => run(reportCommand, ...args)

let folder = ''
const at = (name: string) => join(folder, name)
const powder = demos.find(({ id }) => id === 'milk-powder')!.brief
const save = (name: string, value: unknown) => writeFileSync(at(name), JSON.stringify(value))

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'report-'))
  save('brief.json', powder)
})
afterAll(() => rmSync(folder, { recursive: true }))

describe('gritwise report', () => {
  it('makes the same bytes again from the JSON it keeps', async () => {
    const first = await report(
      at('brief.json'),
      '--out',
      at('a.html'),
      '--json',
      '--date',
      '27 November 2026',
    )
    expect(first.code).toBe(0)
    expect((await report(at('a.json'), '--out', at('b.html'))).code).toBe(0)
    expect(readFileSync(at('b.html'), 'utf8')).toBe(readFileSync(at('a.html'), 'utf8'))
    expect(readFileSync(at('a.html'), 'utf8')).toContain('27 November 2026')
  })

  it('says which version differs, and exits 1', async () => {
    const kept = JSON.parse(readFileSync(at('a.json'), 'utf8'))
    save('old.json', { ...kept, versions: { ...kept.versions, rules: 'gritwise 0.0.1' } })
    const said = vi.spyOn(process.stderr, 'write').mockReturnValue(true)
    expect((await report(at('old.json'), '--out', at('c.html'))).code).toBe(1)
    expect(said.mock.calls.join('')).toContain('rule book gritwise 0.0.1 then')
    said.mockRestore()
  })

  it('makes the same bytes again of a brief that names no contaminants, and assumes them again', async () => {
    const { contaminants: _, ...bare } = powder
    save('bare.json', bare)
    expect((await report(at('bare.json'), '--short', '--json', '--out', at('g.html'))).code).toBe(0)
    expect((await report(at('g.json'), '--out', at('h.html'))).code).toBe(0)
    expect(readFileSync(at('h.html'), 'utf8')).toBe(readFileSync(at('g.html'), 'utf8'))
    expect(JSON.parse(readFileSync(at('g.json'), 'utf8')).brief.contaminants).toBeUndefined()
  })

  it('holds a trial beside what was predicted, and makes the same bytes again with it', async () => {
    const found = [1, 2, 5, 8, 10, 10]
    const rows = [0.9, 1, 1.1, 1.2, 1.35, 1.5].flatMap((mm, size) =>
      Array.from(
        { length: 10 },
        (_, i) =>
          `coil-free-fall,ss316,sphere,${mm},${`p${size}-${i}`},1,${i < found[size]! ? 1 : 0},2026-11-27`,
      ),
    )
    writeFileSync(
      at('runs.csv'),
      [
        'equipment,material,shape,sizeMm,pack,runs,found,date',
        'coil-free-fall,,,,,9151,3,2026-11-27',
        ...rows,
      ].join('\n'),
    )
    const day = ['--date', '27 November 2026']
    const asked = [at('brief.json'), '--runs', at('runs.csv'), '--json', ...day, '--out', at('t.html')]
    expect((await report(...asked)).code).toBe(0)
    expect((await report(at('t.json'), '--out', at('u.html'))).code).toBe(0)
    const html = readFileSync(at('t.html'), 'utf8')
    expect(readFileSync(at('u.html'), 'utf8')).toBe(html)
    const part = html.slice(html.indexOf('id="demonstrated"'), html.indexOf('id="hazards"'))
    expect(part).toContain('Demonstrated beside predicted')
    expect(part).toMatch(/<th scope="row">1\.35<\/th><td>10<\/td><td>10<\/td><td>74 %<\/td>/)
    expect(part).toMatch(/(?:Agrees|Disagrees) with the prediction|Conflict/)
    expect(JSON.parse(readFileSync(at('t.json'), 'utf8')).brief.demonstrated).toBeUndefined()
  })

  it('has a short form, and tells what changed since an earlier issue', async () => {
    const [first, ...points] = powder.points
    const changed: BriefInput = { ...powder, points: [{ ...first!, checkIntervalMin: 30 }, ...points] }
    save('changed.json', changed)
    const since = [at('changed.json'), '--since', at('a.json'), '--out']
    expect((await report(...since, at('d.html'))).code).toBe(0)
    expect(readFileSync(at('d.html'), 'utf8')).toMatch(/time between checks \(points 1\): .* before, 30 now/i)
    expect((await report(at('brief.json'), '--short', '--out', at('e.html'))).code).toBe(0)
    expect(readFileSync(at('e.html')).length).toBeLessThan(readFileSync(at('a.html')).length / 1.4)
  })

  it.each([
    [['none.json'], /--out FILE.html/],
    [['none.json', '--out', 'x.html'], /cannot read none.json/],
  ])('refuses what it cannot do: %j', async (args, words) => {
    await expect(report(...args)).rejects.toThrow(words)
  })

  it('refuses to change a report that is made again', async () => {
    await expect(report(at('a.json'), '--short', '--out', at('f.html'))).rejects.toThrow(
      'made again as it was',
    )
  })
})
