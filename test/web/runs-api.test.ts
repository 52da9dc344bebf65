import { describe, expect, it } from 'vitest'
import { InputError } from '../../src/commands/input.ts'
import { runsCommand } from '../../src/commands/runs.ts'
import { planSchema, runsAnswerSchema } from '../../src/contract/index.ts'
import { openapi } from '../../src/web/api/openapi.ts'
import { createApp } from '../../src/web/app.ts'
import { file, run } from '../commands/run.ts'
import { bagOfKernels as brief } from '../runs/bag-of-kernels.ts'
import { visibleText } from './words/crawl.ts'

const app = createApp()
const post = (path: string, body: unknown) =>
  app.request(path, {
    method: 'POST',
    body: JSON.stringify(body),
    headers: { 'content-type': 'application/json' },
  })
const rows = [
  { equipment: 'xray-single', material: 'quartz', sizeMm: 3, runs: 29, found: 29 },
  { equipment: 'xray-single', material: '', runs: 3000, found: 0 },
]

describe('POST /api/runs', () => {
  it('reads rows or a table, with or without a brief', async () => {
    const bare = runsAnswerSchema.parse(await (await post('/api/runs', { rows })).json())
    expect(bare.groups[0]!.demonstrated).toMatchObject({ sizeMm: 3, basis: 'exact' })
    expect(bare.prediction).toBeNull()
    const csv = 'equipment,material,sizeMm,runs,found\nxray-single,quartz,3,29,29\nxray-single,,,3000,0\n'
    const held = runsAnswerSchema.parse(await (await post('/api/runs', { csv, brief })).json())
    expect(held.groups).toEqual(bare.groups)
    expect(held.prediction).toHaveLength(1)
  })

  it('takes a table of more than 512 kB', async () => {
    const csv = `equipment,material,sizeMm,runs,found,pack\n${Array.from({ length: 30_000 }, (_, i) => `X-machine-07,quartz,3,1,1,${i}`).join('\n')}`
    expect(csv.length).toBeGreaterThan(512 * 1024)
    expect((await post('/api/runs', { csv })).status).toBe(200)
  })

  it('refuses in the words of every other door', async () => {
    const clause = { sizeMm: 'wide', pieces: 1.5, mises: 1 }
    const wrong = await post('/api/runs', { rows, machine: 3, clause })
    const plan = { brief, contaminant: 0.5, power: 'high', equipment: 3, seed: -1 }
    const unplanned = await post('/api/plan', plan)
    for (const answer of [wrong, unplanned]) {
      expect(answer.status).toBe(422)
      const { problems } = (await answer.json()) as { problems: { path: string; message: string }[] }
      expect(problems.length).toBeGreaterThan(3)
      for (const { message } of problems) {
        expect(message).not.toMatch(/^Invalid|^Too |^Unrecognized|undefined|NaN|received|expected/)
        expect(message).toMatch(/given|missing|unknown key|must be/)
      }
    }
  })

  it('names the same mistakes of a table as page and command', async () => {
    const table = [
      'equipment,material,sizeMm,runs,found,thershold',
      'X,quarz,two,0,1,',
      'X,quartz,2,10,11,',
      'X,quartz,2,5.5,1,',
    ].join('\n')
    const api = (await (await post('/api/runs', { csv: table })).json()) as {
      problems: { message: string }[]
    }
    const said = api.problems.map(({ message }) => message)
    expect(said.length).toBeGreaterThan(5)
    const body = new FormData()
    body.set('table', table)
    const page = await (await app.request('/runs', { method: 'POST', body })).text()
    const refusal = await run(runsCommand, file('mistakes.csv', table)).catch((error: unknown) => error)
    expect(refusal).toBeInstanceOf(InputError)
    for (const message of said) {
      expect(visibleText(page)).toContain(message)
      expect((refusal as Error).message).toContain(message)
    }
  })

  it('says of a table that is none what is wrong, and repeats little of it', async () => {
    const heading = 'equipment,material,sizeMm,runs,found'
    for (const csv of [
      `${heading}\nx,quartz,3,1,"${'a'.repeat(1e6)}`,
      `${'x'.repeat(19_000)},${heading}\nx,x,quartz,3,1,1`,
      `${'a,'.repeat(9000)}${heading}\n${'1\n'.repeat(50_000)}`,
      `${heading}\n${`x,${'q'.repeat(9000)},3,1,${'9'.repeat(9000)}x\n`.repeat(500)}`,
      `${heading}\n${'x,quartz,three,1,2\n'.repeat(90_000)}`,
    ]) {
      const answer = await post('/api/runs', { csv })
      expect(answer.status).toBe(422)
      const said = await answer.text()
      expect(said.length).toBeLessThan(20_000)
      expect(said).not.toMatch(/Invalid|CSV_|undefined/)
    }
  })

  it.each([
    [{}, ['csv']],
    [{ rows, csv: '' }, ['csv']],
    [{ rows: [{ ...rows[0], found: 30 }] }, ['rows.0.found']],
    [{ rows, link: 'tobit' }, ['link']],
    [{ rows, brieef: {} }, ['brieef']],
    [{ rows, brief: {} }, ['brief.product', 'brief.points']],
  ])('refuses %j', async (body, paths) => {
    const answer = await post('/api/runs', body)
    expect(answer.status).toBe(422)
    const { problems } = (await answer.json()) as { problems: { path: string }[] }
    expect(problems.map(({ path }) => path)).toEqual(paths)
  })
})

describe('POST /api/plan', () => {
  it('gives the plan', async () => {
    const answer = await post('/api/plan', { brief, contaminant: 0, sizeMm: 5 })
    expect(planSchema.parse(await answer.json()).chosen).not.toBeNull()
  })

  it.each([
    [{ brief }, ['contaminant']],
    [{ brief, contaminant: 0, sizemm: 5 }, ['sizemm']],
    [{ brief, contaminant: 39, sizeMm: 5 }, ['contaminant']],
  ])('refuses what cannot be planned', async (body, paths) => {
    const answer = await post('/api/plan', body)
    expect(answer.status).toBe(422)
    const { problems } = (await answer.json()) as { problems: { path: string }[] }
    expect(problems.map(({ path }) => path)).toEqual(paths)
  })
})

it('both are described', () => {
  expect(Object.keys(openapi.paths)).toEqual(expect.arrayContaining(['/api/runs', '/api/plan']))
  expect(Object.keys(openapi.components.schemas)).toEqual(
    expect.arrayContaining(['RunsRequest', 'RunsAnswer', 'PlanRequest', 'Plan']),
  )
})
