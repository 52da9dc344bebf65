import { spawnSync } from 'node:child_process'
import { chownSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { openStore } from '../../src/store/open.ts'
import type { Store } from '../../src/store/store.ts'

/** A database of a test: opened as often as it is asked for, gone at its end. */
export interface Database {
  readonly name: string
  readonly open: () => Promise<Store>
  readonly address: Readonly<Record<string, string>>
  readonly end: () => void
}

export function sqliteFile(): Database & { readonly file: string } {
  const folder = mkdtempSync(join(tmpdir(), 'kept-'))
  const file = join(folder, 'data', 'kept.sqlite')
  return {
    name: 'SQLite',
    file,
    open: () => openStore({ file }),
    address: { GRITWISE_DATA: join(folder, 'data') },
    end: () => rmSync(folder, { recursive: true, force: true }),
  }
}

const DEBIAN = '/usr/lib/postgresql'
const programs = existsSync(DEBIAN) ? readdirSync(DEBIAN).map((version) => join(DEBIAN, version, 'bin')) : []

export const hasPostgres = programs.length > 0

/** Says loudly that half of a suite is left out; an error where it must not be (GRITWISE_REQUIRE_POSTGRES). */
export function warnOfNoPostgres(): void {
  if (hasPostgres) return
  const words = 'PostgreSQL is not installed (Debian: postgresql): the store is tested on SQLite alone'
  if (process.env.GRITWISE_REQUIRE_POSTGRES) throw new Error(words)
  console.warn(`\n${'!'.repeat(20)} ${words} ${'!'.repeat(20)}\n`)
}

/** A PostgreSQL of its own on a free port of the loopback, in a temporary folder. */
export async function startPostgres(): Promise<
  Database & { readonly stop: () => void; readonly again: () => void }
> {
  const bin = programs.at(-1)!
  const folder = mkdtempSync(join(tmpdir(), 'postgres-'))
  const port = await freePort()
  const user = ownerOf(folder)
  const run = (program: string, ...args: string[]) => {
    const { status, stderr, stdout } = spawnSync(join(bin, program), args, {
      encoding: 'utf8',
      cwd: folder,
      ...user,
      stdio: ['ignore', 'pipe', program === 'pg_ctl' ? 'ignore' : 'pipe'],
    })
    if (status !== 0) throw new Error(`${program}: ${stderr ?? ''} ${stdout ?? ''}`)
  }
  const data = join(folder, 'data')
  run('initdb', '-D', data, '-U', 'gritwise', '--auth=trust', '--no-sync', '--no-instructions')
  const options = `-p ${port} -h 127.0.0.1 -k ${folder} -F`
  const again = () => run('pg_ctl', '-D', data, '-w', '-o', options, '-l', join(folder, 'log'), 'start')
  const stop = () => run('pg_ctl', '-D', data, '-w', '-m', 'immediate', 'stop')
  again()
  const url = `postgres://gritwise@127.0.0.1:${port}/postgres`
  return {
    name: 'PostgreSQL',
    open: () => openStore({ url }),
    address: { DATABASE_URL: url },
    stop,
    again,
    end: () => {
      try {
        stop()
      } finally {
        rmSync(folder, { recursive: true, force: true })
      }
    },
  }
}

/** The server refuses to run as root: there the account that Debian's package makes. */
function ownerOf(folder: string): { uid?: number; gid?: number } {
  if (process.getuid?.() !== 0) return {}
  const id = (flag: string) => Number(spawnSync('id', [flag, 'postgres'], { encoding: 'utf8' }).stdout)
  const user = { uid: id('-u'), gid: id('-g') }
  chownSync(folder, user.uid, user.gid)
  return user
}

const freePort = (): Promise<number> =>
  new Promise((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address() as { port: number }
      server.close(() => resolve(port))
    })
  })
