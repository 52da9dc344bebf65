import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { cardCommand } from '../../src/commands/card.ts'
import { planCommand } from '../../src/commands/plan.ts'
import { runsCommand } from '../../src/commands/runs.ts'
import { planSchema, runsAnswerSchema } from '../../src/contract/index.ts'
import { bagOfKernels, TRIAL_CSV } from '../runs/bag-of-kernels.ts'
import { file, here, run } from './run.ts'

const brief = file('kernels.json', bagOfKernels)
const trial = file('trial.csv', TRIAL_CSV)
const butter = file('butter.json', {
  product: { food: 'butter' },
  points: [{ name: 'packed', heightMm: 30, widthMm: 75, lengthMm: 100, speedMPerMin: 20 }],
  contaminants: [{ material: 'ss304', shape: 'sphere', mustFindMm: 1 }],
  equipment: ['xray-single'],
})

describe('gritwise runs', () => {
  it('says what was shown, the sizes one by one, the clean packs and what is missing', async () => {
    const { out, code } = await run(runsCommand, trial)
    expect(code).toBe(0)
    expect(out).toMatch(/Found 9 times in 10 from 2\.\d+ mm, 95 % sure, on these 60 packs/)
    expect(out).toMatch(/2\.5\s+10\s+8\s+49\.3 %/)
    expect(out).toContain('1 of 3000 clean packs rejected')
    expect(out).toContain('The place of the piece in the pack')
  })

  it('gives the same as JSON, against the prediction of a brief', async () => {
    const { out } = await run(runsCommand, trial, '--brief', brief, '--json')
    const answer = runsAnswerSchema.parse(JSON.parse(out))
    expect(answer.groups).toHaveLength(1)
    expect(answer.prediction).toHaveLength(1)
    expect(answer.prediction![0]!.agreement).toBeGreaterThanOrEqual(0)
    expect(answer.prediction![0]!.words).toMatch(/34 of 60 found/)
  })

  it('reads the runs of simulated cards straight in, and calls them simulated', async () => {
    const out = join(here, 'card')
    await run(cardCommand, butter, '--out', out, '--clean', '3')
    const answer = runsAnswerSchema.parse(
      JSON.parse((await run(runsCommand, join(out, 'runs.csv'), '--json')).out),
    )
    expect(answer.groups.length).toBeGreaterThan(0)
    expect(answer.groups.every(({ simulated, demonstrated }) => simulated && demonstrated === null)).toBe(
      true,
    )
    expect(readFileSync(join(out, 'runs.csv'), 'utf8')).toContain('mm along')
  })

  it.each([
    [[], /takes one table of runs/],
    [[trial, '--link', 'tobit'], /--link must be one of logit, probit/],
    [
      [file('bad.csv', 'equipment,material,sizeMm,runs,found\nX,quartz,2,3,4\n')],
      /1 problem:\n {2}row 2, found/,
    ],
  ])('%j is refused', async (args, said) => {
    await expect(run(runsCommand, ...(args as string[]))).rejects.toThrow(said)
  })
})

describe('gritwise plan', () => {
  it('says pieces, power, clean run and clause', async () => {
    const { out, code } = await run(planCommand, brief, '--contaminant', '0', '--size', '5')
    expect(code).toBe(0)
    expect(out).toMatch(/pieces of 5 mm with (none|at most \d) missed show/)
    expect(out).toMatch(/9,151 good packs/)
    expect(out).toMatch(/^Clause: /m)
  })

  it('gives it as JSON: every piece with its order, pack and place, no size twice in a pack', async () => {
    const { out } = await run(planCommand, brief, '--contaminant', '0', '--size', '5', '--json')
    const { pieces, chosen } = planSchema.parse(JSON.parse(out))
    expect(pieces.map(({ order }) => order)).toEqual(pieces.map((_, i) => i + 1))
    expect(pieces.filter(({ sizeMm }) => sizeMm === 5)).toHaveLength(chosen!.clause.pieces)
    const loads = new Set(pieces.map(({ pack, sizeMm }) => `${pack} ${sizeMm}`))
    expect(loads.size).toBe(pieces.length)
  })

  it('says so, with exit code 1, where the size is too near to what is predicted, and which can be shown', async () => {
    const { out, code } = await run(planCommand, brief, '--contaminant', '0', '--size', '1.5')
    expect(code).toBe(1)
    expect(out).toMatch(/No count of pieces here shows 1\.5 mm .* mm can be shown so/)
  })

  it.each([
    [[brief], /needs --contaminant/],
    [[brief, '--contaminant', '30'], /the brief has contaminants 0 to/],
    [[brief, '--contaminant', '0', '--equipment', 'xray-none'], /no expected size of xray-none/],
    [[brief, '--contaminant', '0', '--power', '2'], /--power must be a number from 0\.5 to 0\.99/],
  ])('%j is refused', async (args, said) => {
    await expect(run(planCommand, ...args)).rejects.toThrow(said)
  })
})
