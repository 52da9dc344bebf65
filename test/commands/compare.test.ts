import { describe, expect, it } from 'vitest'
import { compareCommand } from '../../src/commands/compare.ts'
import { comparisonSchema } from '../../src/contract/index.ts'
import { input } from '../compare/two-machines.ts'
import { file, run } from './run.ts'

const bag = file('bag.json', { ...input, equipment: ['xray-single', 'xray-dual'] })
const flat = file('flat.json', {
  ...input,
  equipment: ['xray-single', 'xray-dual'],
  points: [{ ...input.points[0]!, heightMm: 25, massG: 500 }],
})
const compare = (...args: string[]) => run(compareCommand, ...args)

describe('gritwise compare', () => {
  it('says whether the dearer is needed, shows what differs, and parts questions from homework', async () => {
    const { out, code } = await compare(bag)
    expect(code).toBe(0)
    expect(out).toMatch(/^The dual-energy x-ray machine is needed/)
    expect(out).toMatch(/Quoted for x-ray from above, dual energy:\n- Quoted 2\.5 mm/)
    const [supplier, ours] = out.split('Settle ourselves:')
    expect(supplier).not.toContain('No time between checks')
    expect(ours).toContain('No time between checks')
  })

  it('lays one pack beside another, as JSON too', async () => {
    const { out } = await compare(bag, flat, '--machines', 'p0.xray-single', '--json')
    const data = comparisonSchema.parse(JSON.parse(out))
    expect(data.sides.map(({ key }) => key)).toEqual(['p0.xray-single', 'B.p0.xray-single'])
    const [thick, thin] = data.sides.map(({ sizes }) => sizes[0]!.expectedMm!)
    expect(thin).toBeLessThan(thick!)
  })

  it.each([
    [[], /takes one brief, or two/],
    [[bag, '--false-rejects', 'often'], /--false-rejects: .*write a number/],
    [[bag, '--machines', 'p0.coil-single'], /no machine p0\.coil-single .*there are p0\.xray/],
    [['-', '-'], /only one of the two/],
  ])('says what is wrong with %j', async (args, message) => {
    await expect(compare(...args)).rejects.toThrow(message)
  })
})
