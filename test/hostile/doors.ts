import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { deflateRawSync } from 'node:zlib'
import { endingOf } from '../../src/commands/ending.ts'
import { loadBrief } from '../../src/commands/load-brief.ts'
import { advice } from '../views/fixture.ts'
import { app } from '../web/stand-in.ts'

/** What came back from a door: its status (of a command 200 or 422 for exit 0 or 2), and what was said. */
export interface Came {
  readonly door: Door
  readonly status: number
  readonly said: string
  /** Fields that a refusal names; null where the door answers in words. */
  readonly problems: readonly { readonly path: string; readonly message: string }[] | null
}

export type Door = 'api' | 'address' | 'import' | 'command' | 'report'
export const DOORS: readonly Door[] = ['api', 'address', 'import', 'command', 'report']

const folder = mkdtempSync(join(tmpdir(), 'hostile-'))
process.on('exit', () => rmSync(folder, { recursive: true, force: true }))

const packed = (text: string) => deflateRawSync(Buffer.from(text)).toString('base64url')

/** One text sent through one door as if it were a brief. */
export async function send(text: string, door: Door): Promise<Came> {
  if (door === 'command') return byCommand(text)
  const answer = await ask(text, door)
  const said = await answer.text()
  const problems =
    (door === 'api' || door === 'report') && answer.status >= 400 ? JSON.parse(said).problems : null
  return { door, status: answer.status, said, problems }
}

function ask(text: string, door: Exclude<Door, 'command'>): Response | Promise<Response> {
  if (door === 'address') return app.request(`/advice?b=${packed(text)}`)
  if (door === 'import') {
    const form = new FormData()
    form.set('brief-file', new File([text], 'brief.json', { type: 'application/json' }))
    return app.request('/brief/import', { method: 'POST', body: form })
  }
  return app.request(door === 'report' ? '/api/report' : '/api/advice', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: door === 'report' ? keptWith(text) : text,
  })
}

/** What a report keeps, with the text where its brief stands; a byte order mark stays ahead of all. */
function keptWith(text: string): string {
  const [mark, rest] = text.startsWith('\uFEFF') ? ['\uFEFF', text.slice(1)] : ['', text]
  const kept = { report: 1, date: '28 November 2026', short: false, versions: advice.versions, changes: null }
  return `${mark}${JSON.stringify(kept).slice(0, -1)},"brief":${rest}}`
}

async function byCommand(text: string): Promise<Came> {
  const file = join(folder, 'brief.json')
  writeFileSync(file, text)
  try {
    await loadBrief(file)
    return { door: 'command', status: 200, said: '', problems: null }
  } catch (error) {
    const { said, code } = endingOf(error)
    return { door: 'command', status: code === 2 ? 422 : 500, said, problems: null }
  }
}
