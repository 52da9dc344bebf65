import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { fileURLToPath } from 'node:url'
import { sqliteFile } from './databases.ts'

const PROGRAM = fileURLToPath(new URL('saves-until-killed.ts', import.meta.url))

/** Ends a program in the middle of its saves, over and over; what it had promised and what is there afterwards. */
export async function killRounds(
  rounds: number,
): Promise<{ promised: number; there: number; whole: boolean }[]> {
  const database = sqliteFile()
  const first = await database.open()
  const { id } = await first.add('w', { kind: 'brief', title: 'K', body: { revision: 1 }, by: 'k' })
  await first.close()
  const seen: { promised: number; there: number; whole: boolean }[] = []
  try {
    for (let there = 1; seen.length < rounds; ) {
      const child = spawn(process.execPath, ['--import', 'tsx', PROGRAM, database.file, id, String(there)], {
        stdio: ['ignore', 'pipe', 'inherit'],
      })
      let said = ''
      const enough = there + 1 + Math.floor(Math.random() * 20)
      child.stdout.on('data', (chunk) => {
        said += chunk
        if (Number(said.trimEnd().split('\n').at(-1)) >= enough) child.kill('SIGKILL')
      })
      await once(child, 'close')
      const promised = Number(said.slice(0, said.lastIndexOf('\n')).split('\n').at(-1))
      const store = await database.open()
      const revisions = await store.revisions('w', id)
      await store.close()
      there = revisions[0]!.revision
      const whole = revisions.every(
        ({ revision, body }, at) =>
          revision === there - at && (body as { revision: number }).revision === revision,
      )
      seen.push({ promised, there, whole: whole && revisions.length === there })
    }
    return seen
  } finally {
    database.end()
  }
}
