import { describe, expect, it } from 'vitest'
import { fragmentCommand } from '../../src/commands/fragment.ts'
import { fragmentAnswerSchema } from '../../src/contract/index.ts'
import { demoInput } from '../advice/demo.ts'
import { file, run } from './run.ts'

const jar = file('jar.json', { ...demoInput('sauce-jar'), equipment: ['xray-side', 'xray-single'] })
const fragment = (...args: string[]) => run(fragmentCommand, ...args)

describe('gritwise fragment', () => {
  it('says the chance, what it rests on, where it is blind, and what no chance tells', async () => {
    const { out, code } = await fragment(
      jar,
      '--material',
      'glass_any',
      '--shape',
      'flake',
      '--size',
      '2',
      '--face',
      '30',
    )
    expect(code).toBe(0)
    expect(out).toMatch(/^Glass flake of 30 mm², 2 mm thick: of the machines named in the brief/)
    // What sinks to a base that a level beam does not see is not found, however strong it would show elsewhere.
    expect(out).toMatch(/\[xray-side\]: not found/)
    expect(out).toMatch(/\[xray-single\]: cannot take this pack/)
    expect(out).toContain('base: blind')
    expect(out).toContain('What no chance tells:')
  })
  it('takes sizes in other units, and gives JSON', async () => {
    const { out } = await fragment(jar, '--material', 'glass_any', '--size', '0.3cm', '--json')
    const answer = fragmentAnswerSchema.parse(JSON.parse(out))
    expect(answer.fragment.sizeMm).toBeCloseTo(3, 12)
  })
  it.each([
    [['--material', 'glass_any'], /needs --material and --size/],
    [['--material', 'glas_any', '--size', '2'], /did you mean glass_any/],
    [['--material', 'glass_any', '--size', 'big'], /--size: /],
    [['--material', 'glass_any', '--size', '2', '--shape', 'wire'], /a wire needs its length/],
  ])('%j is refused', async (args, said) => {
    await expect(fragment(jar, ...args)).rejects.toThrow(said)
  })
})
