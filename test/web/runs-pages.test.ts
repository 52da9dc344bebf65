import { describe, expect, it } from 'vitest'
import { readRunsTable } from '../../src/runs/index.ts'
import { createApp } from '../../src/web/app.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { bagOfKernels, TRIAL_CSV } from '../runs/bag-of-kernels.ts'
import { formOf, text } from './stand-in.ts'

const app = createApp()
const packed = packBrief(bagOfKernels)
const get = async (path: string) => {
  const answer = await app.request(path)
  return { status: answer.status, body: await answer.text() }
}
const post = async (path: string, answers: Readonly<Record<string, string>>) => {
  const answer = await app.request(path, formOf(answers))
  return { status: answer.status, body: await answer.text(), headers: answer.headers }
}

describe('the page of test runs', () => {
  it('stands by itself and with a brief', async () => {
    expect((await get('/runs')).body).toContain('Table of runs')
    expect((await get(`/runs?b=${packed}`)).body).toContain(`/plan?b=${packed}`)
    expect((await get('/runs?b=nonsense')).status).toBe(400)
  })

  it('says what was shown, against the prediction, with its picture and every number beneath', async () => {
    const { status, body } = await post('/runs', { b: packed, table: TRIAL_CSV })
    const read = text(body)
    expect(status).toBe(200)
    expect(read).toMatch(/Found 9 times in 10 from 2\.\d+ mm, 95 % sure, on these 60 packs/)
    expect(read).toMatch(/(?:Agrees|Disagrees) with the prediction: 34 of 60 found/)
    expect(body).toContain('class="trial-plot"')
    expect(body.match(/<circle/g)).toHaveLength(6)
    expect(body).not.toMatch(/<style| style="| on[a-z]+="/)
  })

  it('names every mistake, keeps what was typed and reads nothing', async () => {
    const { status, body } = await post('/runs', {
      table: 'equipment,material,sizeMm,runs,found\nX,quarz,a,2,3\n',
    })
    expect(status).toBe(422)
    expect(text(body)).toMatch(/Nothing was read: 3 places to mend/)
    expect(body).toContain('X,quarz,a,2,3')
    expect((await post('/runs', { table: '' })).status).toBe(422)
  })

  it('puts machines side by side and says what the same packs show', async () => {
    const header = 'equipment,setting,material,sizeMm,piece,pack,runs,found\n'
    const rows = Array.from(
      { length: 30 },
      (_, i) => `A,1,quartz,3,Q,${i},1,1\nB,1,quartz,3,Q,${i},1,${i % 3 === 0 ? 0 : 1}`,
    )
    const clean = 'A,1,,,,,3000,0\nB,1,,,,,3000,0\n'
    const read = text((await post('/runs', { table: `${header}${rows.join('\n')}\n${clean}` })).body)
    expect(read).toMatch(/A and B 20 10 0 0 A found pieces that the other missed/)
    expect(read).toContain('not demonstrated')
  })

  it('says whether the clause is met, and why not', async () => {
    const asked = { table: TRIAL_CSV, clauseSize: '2,7', clausePieces: '10', clauseMisses: '1' }
    expect(text((await post('/runs', asked)).body)).toContain('Met: 10 pieces of 2.7 mm, 1 missed')
    const more = { ...asked, clauseMisses: '0', clauseClean: '9151', clauseRejects: '4' }
    expect(text((await post('/runs', more)).body)).toContain(
      'Not met: 10 pieces of 2.7 mm, 1 missed; 3000 clean packs, 1 rejected (1 were missed, at most 0 may be; 3000 clean packs were run, 9151 are asked)',
    )
    expect((await post('/runs', { ...asked, clausePieces: 'many' })).status).toBe(422)
  })

  it('gives the table as a file and as a sheet to sign', async () => {
    const file = await post('/runs/table.csv', { table: TRIAL_CSV })
    expect(file.headers.get('content-disposition')).toContain('attachment')
    expect(file.body).toBe(TRIAL_CSV)
    const sheet = text((await post('/runs/sheet', { b: packed, table: TRIAL_CSV })).body)
    expect(sheet).toContain('For the supplier')
    expect(sheet).toContain('What was shown, and what was not')
  })
})

describe('the page of a plan', () => {
  it('asks first, then plans, with a sheet and an entry to follow', async () => {
    expect((await get(`/plan?b=${packed}`)).body).not.toContain('Acceptance clause')
    const { status, body } = await get(`/plan?b=${packed}&contaminant=0&size=5`)
    expect(status).toBe(200)
    expect(text(body)).toMatch(/pieces of 5 mm with .* missed show that 5 mm is found 9 times in 10/)
    expect(body).toContain('/runs/enter?')
    expect((await get(`/plan?b=${packed}&contaminant=0&size=wide`)).status).toBe(422)
    for (const machine of ['~', '0.no-such-machine', '7.xray-dual']) {
      const refused = await get(`/plan?b=${packed}&contaminant=0&size=5&machine=${machine}`)
      expect(refused.status).toBe(422)
      expect(text(refused.body)).toContain('Machine: no such machine of this brief')
    }
  })

  it('has no sheet and no entry where no count of pieces shows it', async () => {
    expect(text((await get(`/plan?b=${packed}&contaminant=0&size=1.5`)).body)).toContain(
      'No count of pieces here',
    )
    expect((await get(`/runs/enter?b=${packed}&contaminant=0&size=1.5`)).status).toBe(422)
  })

  it('prints a line for each piece', async () => {
    const { body } = await get(`/plan/sheet?b=${packed}&contaminant=0&size=5`)
    expect((body.match(/<tr>/g) ?? []).length).toBeGreaterThan(29)
  })
})

describe('an entry without script', () => {
  const hidden = (html: string): Record<string, string> =>
    Object.fromEntries(
      [...html.matchAll(/<input type="hidden" name="([^"]+)" value="([^"]*)"/g)].map(([, name, value]) => [
        name!,
        value!.replaceAll('&quot;', '"').replaceAll('&amp;', '&'),
      ]),
    )
  const head = {
    equipment: 'X-07',
    setting: '12',
    date: '2026-11-27',
    shift: '',
    operator: '',
    cleanPacks: '9151',
    cleanRejects: '3',
  }

  it('cannot be sent while a piece or a figure is open; then gives the trial and its table', async () => {
    const carried = hidden((await get(`/runs/enter?b=${packed}&contaminant=0&size=5`)).body)
    const pieces = Object.keys(carried).filter((name) => name.startsWith('piece-'))
    const seen = (value: string, but: readonly string[] = []) =>
      Object.fromEntries(
        pieces
          .map((name) => name.replace('piece-', 'seen-'))
          .filter((name) => !but.includes(name))
          .map((name) => [name, value]),
      )
    const open = await post('/runs/enter', { ...carried, ...head, setting: '', ...seen('found', ['seen-7']) })
    expect(open.status).toBe(422)
    expect(open.body).toContain('href="#setting"')
    expect(open.body).toContain('href="#seen-7"')
    expect(open.body.match(/checked=""/g)).toHaveLength(pieces.length - 1)
    for (const wrong of [
      { cleanPacks: '0' },
      { cleanRejects: '9999' },
      { cleanPacks: 'many' },
      { date: 'today' },
    ])
      expect((await post('/runs/enter', { ...carried, ...head, ...wrong, ...seen('found') })).status).toBe(
        422,
      )

    const sent = await post('/runs/enter', { ...carried, ...head, ...seen('found'), 'seen-1': 'left' })
    expect(sent.status).toBe(200)
    expect(sent.body).toContain('data-arrived')
    const table = hidden(sent.body).table!
    const read = readRunsTable(table)
    expect(read.ok && read.rows.filter(({ material }) => material !== '')).toHaveLength(pieces.length - 1)
    expect(read.ok && read.rows.find(({ material }) => material === '')).toMatchObject({
      runs: 9151,
      found: 3,
    })
    expect(text(sent.body)).toMatch(/Met: \d+ pieces of 5 mm|Not met: \d+ pieces of 5 mm/)
  }, 120_000)

  it('that did not arrive whole is said to be so', async () => {
    expect((await post('/runs/enter', { b: packed, ...head })).status).toBe(400)
    expect((await post('/runs/enter', { ...head })).status).toBe(400)
  })
})
