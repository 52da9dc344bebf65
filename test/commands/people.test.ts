import { spawnSync } from 'node:child_process'
import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { peopleCommand } from '../../src/commands/people.ts'

const main = fileURLToPath(new URL('../../dist/src/main.js', import.meta.url))
const env = {
  ...process.env,
  GRITWISE_DATA: join(mkdtempSync(join(tmpdir(), 'people-')), 'data'),
  DATABASE_URL: '',
}
const people = (args: readonly string[], input = 'a long enough password\n') => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [main, 'people', ...args], {
    env,
    input,
    encoding: 'utf8',
  })
  return { status, stdout, stderr }
}

describe('gritwise people', () => {
  it('makes accounts from a name and a password, each once, and lists them with what they may', () => {
    expect(people(['add', 'Ann']).status).toBe(0)
    expect(people(['add', 'Bob', '--role', 'reader']).status).toBe(0)
    expect(people(['add', 'Ann'])).toMatchObject({
      status: 2,
      stderr: expect.stringContaining('Ann is taken'),
    })
    expect(people(['list']).stdout).toBe('Ann\tadministrator\nBob\treader\n')
  })

  it('refuses a short password and a name nobody has, in a sentence', () => {
    for (const [args, input, words] of [
      [['add', 'Eve'], 'short\n', '15 to 200 characters'],
      [['password', 'Nobody'], undefined, 'Nobody is not in main'],
    ] as const) {
      const { status, stderr } = people(args, input)
      expect(status).toBe(2)
      expect(stderr).toContain(words)
      expect(stderr.trim().split('\n')).toHaveLength(1)
    }
  })

  it('refuses a role that is none and what it does not know, before it reads a password', async () => {
    await expect(peopleCommand(['add', 'Eve', '--role', 'king'])).rejects.toThrow(
      '--role is one of reader, author, administrator',
    )
    await expect(peopleCommand(['list', 'Ann'])).rejects.toThrow('people knows')
  })
})
