import { spawn, spawnSync } from 'node:child_process'
import { once } from 'node:events'
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { demoInput } from '../advice/demo.ts'

const root = fileURLToPath(new URL('../..', import.meta.url))
const { bin, dependencies, scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
  bin: Record<string, string>
  dependencies: Record<string, string>
  scripts: Record<string, string>
}

describe('the packed package in an empty folder', () => {
  let folder = ''

  function run(command: string, args: readonly string[], cwd = folder): string {
    const { status, stdout, stderr, error } = spawnSync(command, args, { cwd, encoding: 'utf8' })
    if (error) throw error
    expect(status, `${command} ${args.join(' ')}\n${stderr}`).toBe(0)
    return stdout
  }

  /** What npm would publish of the built house; of what it depends on, it gets what it names and nothing else. */
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'packed-'))
    const modules = join(folder, 'node_modules')
    const [packed] = JSON.parse(run('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'], root)) as [
      { files: { path: string }[] },
    ]
    expect(packed.files.length, 'npm run build comes first').toBeGreaterThan(100)
    for (const { path } of packed.files) cpSync(join(root, path), join(modules, 'gritwise', path))
    for (const name of Object.keys(dependencies)) {
      const from = join(root, 'node_modules', name)
      if (name.includes('/')) mkdirSync(join(modules, name, '..'), { recursive: true })
      symlinkSync(from, join(modules, name))
    }
    writeFileSync(join(folder, 'package.json'), '{ "private": true, "type": "module" }')
    writeFileSync(join(folder, 'brief.json'), JSON.stringify(demoInput('mince')))
  })
  afterAll(() => rmSync(folder, { recursive: true, force: true }))

  it('is built before it is packed', () => {
    expect(scripts.prepack).toContain('npm run build')
  })

  it('brings a command that helps and advises', () => {
    const command = join(folder, 'node_modules', 'gritwise', bin.gritwise!)
    expect(readFileSync(command, 'utf8')).toMatch(/^#!\/usr\/bin\/env node\n/)
    expect(run(process.execPath, [command, '--help'])).toContain('gritwise advise BRIEF.json')
    expect(run(process.execPath, [command, 'advise', 'brief.json'])).toContain('Beef mince')
  })

  it('says in one sentence that the disk is full or that nobody reads any more, and exits 1', () => {
    const command = join(folder, 'node_modules', 'gritwise', bin.gritwise!)
    for (const [into, said] of [
      ['> /dev/full', 'the disk is full'],
      ['| true', 'nobody reads it any more'],
    ]) {
      // The reader ends first: the shell waits for it before the command may write.
      const line =
        into === '| true'
          ? `{ sleep 0.2; node "$0" --help; echo $? >&2; } ${into}`
          : `node "$0" --help ${into}; echo $? >&2`
      const { stderr } = spawnSync('sh', ['-c', line, command], { encoding: 'utf8' })
      expect(stderr, into).toBe(`gritwise: the output is not whole: ${said}\n1\n`)
    }
  })

  it('brings a server that ends in order when it is told to', async () => {
    const command = join(folder, 'node_modules', 'gritwise', bin.gritwise!)
    const server = spawn(process.execPath, [command, 'serve', '--port', '0', '--workers', '1'], {
      env: { ...process.env, XDG_DATA_HOME: folder },
    })
    const [address] = (await once(server.stdout, 'data')) as [Buffer]
    expect(String(address)).toMatch(/^gritwise is at http:\/\/127\.0\.0\.1:\d+\/$/m)
    server.kill('SIGTERM')
    expect((await once(server, 'exit'))[0]).toBe(0)
  }, 60_000)

  it('can be imported: a brief is read, and advice given', () => {
    const program = join(folder, 'own.mjs')
    writeFileSync(
      program,
      `import { readFileSync } from 'node:fs'
      import { advise, parseBrief } from 'gritwise'
      const parsed = parseBrief(JSON.parse(readFileSync('brief.json', 'utf8')))
      if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
      const { points } = await advise(parsed.brief, { withoutChanges: true, withoutMissing: true })
      console.log(JSON.stringify(points.map(({ options }) => options.length)))`,
    )
    const options: number[] = JSON.parse(run(process.execPath, [program]))
    expect(options).toHaveLength(demoInput('mince').points.length)
    for (const compared of options) expect(compared).toBeGreaterThan(0)
  })
})
