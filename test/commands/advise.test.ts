import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { adviseCommand } from '../../src/commands/advise.ts'
import { InputError } from '../../src/commands/input.ts'
import { adviceSchema, contrastSchema, differenceSchema } from '../../src/contract/index.ts'
import { demoInput } from '../advice/demo.ts'
import { file, here, run } from './run.ts'

const brief = file('mince.json', demoInput('mince'))
const beans = file('beans.json', { ...demoInput('beans'), equipment: ['xray-dual', 'xray-single'] })
const advise = (...args: string[]) => run(adviseCommand, ...args)

describe('gritwise advise', () => {
  it('gives a table with all that goes with it, or the whole as JSON', async () => {
    const { out, code } = await advise(brief)
    expect(code).toBe(0)
    for (const heading of [
      'Together:',
      'behind pipe after the grinder:',
      'What would change it:',
      'Assumed:',
    ])
      expect(out).toContain(heading)
    const { out: json } = await advise(brief, '--json')
    const advice = adviceSchema.parse(JSON.parse(json))
    expect(out.split('\n')[2], 'the answer first').toBe(advice.answer.sentence)
    expect(out).toContain('left to do')
  })
  it('--reasons says why and why not, --tree the whole conditions', async () => {
    const { out } = await advise(beans, '--reasons')
    const [, calculation] = /(p0\.xray-dual\.c0\.\w+)\n/.exec(out) ?? []
    expect((await advise(beans, '--trail', calculation!)).out).toMatch(/source/)
    const [, rule] = /Cautions:\n.*\[([\w-]+)\]\n/.exec(out) ?? []
    expect((await advise(beans, '--rule', rule!)).code).toBe(0)
    expect(out).toMatch(/why not: /)
    expect(out, 'wood that no machine finds').toContain('keep it out')
    expect(out).toMatch(/favours: .*\n {6}holds: energy channels is at least 2; here 2 \(computed/)
    expect(out).not.toContain('whole:')
    expect((await advise(beans, '--reasons', '--tree')).out).toMatch(/whole:\n +holds: all of/)
  })
  it('--trail walks a calculation to its table values and sources', async () => {
    const { out } = await advise(beans, '--trail', 'p0.xray-dual.c0.expected')
    expect(out).toMatch(/^d₉₀ = [\d.]+ mm {2}expected size/)
    expect(out).toMatch(/table value/)
    expect(out).toMatch(/Sources:\n {2}\S+: /)
    await expect(advise(beans, '--trail', 'p0.nothing.expected')).rejects.toThrow(
      /no calculation .*some it has: p0\.xray/,
    )
  })
  it('--rule shows one rule wherever it was asked, fired or not', async () => {
    const { out } = await advise(beans, '--rule', 'second-energy-pays')
    expect(out).toMatch(/xray-dual: applies {2}\(p0\.xray-dual\.second-energy-pays\)/)
    expect(out).toMatch(/xray-single: does not apply/)
    expect(out).toMatch(/does not hold: energy channels is at least 2; here 1 .*settles it/)
    for (const line of ['because: ', 'except: ', 'source '])
      expect(out.split('\n').some((one) => one.startsWith(line))).toBe(true)
    expect((await advise(beans, '--rule', 'class-follows-the-analysis')).out).toMatch(
      /\nsource codex-cxc-1: Codex Alimentarius/,
    )
    expect((await advise(beans, '--rule', 'haccp-eu-uk')).out).toContain('[eu-haccp-principles]')
    await expect(advise(beans, '--rule', 'nothing')).rejects.toThrow(InputError)
  })
  it('--rather sets two machines side by side', async () => {
    const { out } = await advise(beans, '--rather', 'xray-dual', 'xray-single')
    expect(out).toMatch(
      /^belt to the packing hall, two machines: x-ray from above, dual energy, .*single energy/,
    )
    const [contrast] = JSON.parse((await advise('--rather', 'xray-dual', 'xray-single', beans, '--json')).out)
    expect(contrastSchema.safeParse(contrast).success).toBe(true)
    await expect(advise(beans, '--rather', 'xray-dual')).rejects.toThrow(/takes two machines/)
    await expect(advise(beans, '--rather', 'xray-dual', 'magnet')).rejects.toThrow(/machines compared: /)
  })
  it('--rules DIR --difference shows what another book changes', async () => {
    const own = join(here, 'own')
    mkdirSync(own)
    const threshold = {
      id: 'twoEnergies',
      value: 3,
      unit: '',
      label: 'channels that count as several',
      source: 'own-judgement',
      evidence: 'judgement',
    }
    writeFileSync(join(own, 'thresholds.json'), JSON.stringify([threshold]))
    const { out } = await advise(beans, '--rules', own, '--difference')
    expect(out).toMatch(/^From gritwise .* to gritwise .* \+ own/)
    expect(out).toMatch(/\[second-energy-pays\] .*: applies → does not apply/)
    const json = JSON.parse((await advise(beans, '--rules', own, '--difference', '--json')).out)
    expect(differenceSchema.safeParse(json).success).toBe(true)
    await expect(advise(beans, '--difference')).rejects.toThrow(/--rules DIR/)
  })
})
