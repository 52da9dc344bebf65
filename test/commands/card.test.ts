import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import { cardCommand } from '../../src/commands/card.ts'
import { InputError } from '../../src/commands/input.ts'
import { Trouble, writeFiles } from '../../src/commands/output.ts'

const brief = {
  title: 'Butter, 250 g',
  product: { food: 'butter' },
  points: [
    {
      name: 'packed',
      heightMm: 30,
      widthMm: 75,
      lengthMm: 100,
      speedMPerMin: 20,
      falseRejectsPerPack: 0.001,
    },
  ],
  contaminants: [{ material: 'ss304', shape: 'sphere', mustFindMm: 1 }],
  equipment: ['xray-single'],
}
let folder = ''
let file = ''

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'card-'))
  file = join(folder, 'brief.json')
  writeFileSync(file, JSON.stringify(brief))
  vi.spyOn(process.stdout, 'write').mockImplementation(() => true)
})
afterAll(() => {
  vi.restoreAllMocks()
  rmSync(folder, { recursive: true })
})

describe('gritwise card', () => {
  it('writes pictures, runs and the card', async () => {
    const out = join(folder, 'out')
    expect(await cardCommand([file, '--out', out, '--seed', '5'])).toBe(0)
    const card = JSON.parse(readFileSync(join(out, 'card.json'), 'utf8'))
    expect(card).toMatchObject({ simulated: true, seed: 5, title: 'Butter, 250 g' })
    const pictures = card.machines[0].pictures.map((p: { file: string }) => p.file)
    expect(readdirSync(out).sort()).toEqual(
      [
        'card.json',
        'runs.csv',
        ...pictures.flatMap((name: string) => [name, name.replace('.png', '.svg')]),
      ].sort(),
    )
    const [header, ...rows] = readFileSync(join(out, 'runs.csv'), 'utf8').trimEnd().split('\n')
    expect(header).toBe(
      'equipment,piece,material,shape,sizeMm,lengthMm,faceMm2,placement,position,runs,found,signal,threshold,note',
    )
    expect(rows.length).toBe(card.machines[0].pieces)
    expect(rows.every((row) => row.startsWith('xray-single,1-'))).toBe(true)
  })

  it.each([
    [['--seed', 'x'], /--seed must be a whole number/],
    [['--point', '1'], /--point must be a whole number from 0 to 0/],
    [['--equipment', 'xray-dual'], /it has xray-single/],
    [['--placement', 'beside'], /inside or outside; beside/],
    [['--sizes', '0=1,two'], /INDEX=SIZE/],
  ])('refuses %j and writes nothing', async (more, message) => {
    const out = join(folder, 'refused')
    await expect(cardCommand([file, '--out', out, ...more])).rejects.toThrow(message)
    await expect(cardCommand([file, '--out', out, ...more])).rejects.toBeInstanceOf(InputError)
    expect(existsSync(out)).toBe(false)
  })

  it('needs a folder to write to', async () => {
    await expect(cardCommand([file])).rejects.toThrow(/--out DIR/)
    await expect(cardCommand([file, '--out', file])).rejects.toThrow(/is a file/)
  })

  it.skipIf(!existsSync('/proc/self'))('ends in words where no folder can be made', async () => {
    for (const out of ['/proc/pictures', '/proc/one/two/three', '/proc/version/pictures']) {
      const ended = await writeFiles(out, [{ name: 'card.json', content: '{}' }]).catch((error) => error)
      expect(ended).toBeInstanceOf(Trouble)
      expect(ended.message).toMatch(
        /^cannot write into [^:]+: (there is no such folder|a file stands|nothing|it may not)/,
      )
    }
  })

  it('makes the folders above its own', async () => {
    const out = join(folder, 'a', 'b', 'c')
    await writeFiles(out, [{ name: 'card.json', content: '{}' }])
    expect(readdirSync(out)).toEqual(['card.json'])
  })
})
