import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { MOST_FAILURES_FROM } from '../../src/store/people/people.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { keepingIn } from '../../src/web/kept-store/keeping.ts'
import { workedHere } from '../../src/web/lines/table-work.ts'
import { NobodyToldWho, wayInOf } from '../../src/web/people/way-in.ts'
import { door } from '../../src/web/serving/door.ts'
import { ownThread } from '../../src/web/serving/own-thread.ts'
import { senderBy } from '../../src/web/serving/sender.ts'
import { sqliteFile } from '../store/databases.ts'
import { formOf, text } from './stand-in.ts'
import { labelsOn, reviewedLabels } from './words/labels.ts'
import { NEVER } from './words/word-rules.ts'

const database = sqliteFile()
const keeping = keepingIn({ file: database.file })
const PASSWORD = 'a long enough password'
const brief = packBrief({
  title: 'Cheddar block',
  product: { food: 'cheddar' },
  points: [{ heightMm: 80, widthMm: 100, lengthMm: 200, speedMPerMin: 20 }],
  contaminants: [{ material: 'ss316', mustFindMm: 2 }],
})
const workforce = { atOnce: 1, work: () => Promise.reject(new Error('none')) }
const own = ownThread(
  { tables: workedHere(workforce), keeping, wayIn: wayInOf('0.0.0.0', { accounts: true }) },
  (request) => {
    return new Response(`page of ${new URL(request.url).pathname}`)
  },
)
const app = door(own.answers)
const read = { accept: 'text/html' }
const get = (path: string, cookie = '') =>
  app.request(`http://localhost${path}`, { headers: { ...read, cookie } })
const from = (remoteAddress: string) => ({ incoming: { socket: { remoteAddress } } })
const post = (path: string, answers: Record<string, string>, cookie = '', place = '192.0.2.1') => {
  const form = formOf(answers)
  const headers = { ...form.headers, cookie }
  return app.request(`http://localhost${path}`, { ...form, headers }, from(place))
}
const signIn = async (name: string, password = PASSWORD) => {
  const answer = await post('/sign-in', { name, password, to: '/kept' })
  return { answer, cookie: (answer.headers.get('set-cookie') ?? '').split(';')[0]! }
}
const sittings = new Map<string, Promise<string>>()
/** The cookie of a person who signed in once for all tests: a password takes its time. */
const as = (name: string) => {
  if (!sittings.has(name))
    sittings.set(
      name,
      signIn(name).then(({ cookie }) => cookie),
    )
  return sittings.get(name)!
}
const tokenFor = async (cookie: string) =>
  /name="token" value="([\w-]+)"/.exec(await (await get('/kept', cookie)).text())![1]!

beforeAll(async () => {
  const { people } = await keeping.store()
  const person = (name: string, role: 'reader' | 'author' | 'administrator', workspace = 'main') =>
    people.add({ name, role, workspace }, PASSWORD, 'test')
  await Promise.all([
    person('ada', 'administrator'),
    person('ben', 'author'),
    person('rea', 'reader'),
    person('eve', 'author', 'theirs'),
    person('lou', 'reader'),
    person('new-password', 'reader'),
  ])
})
afterAll(async () => {
  await own.close()
  database.end()
})

describe('a program that other machines reach', () => {
  it('does not stand open: it is told who may come, or does not start', () => {
    expect(() => wayInOf('0.0.0.0', {})).toThrow(NobodyToldWho)
    expect(() => wayInOf('0.0.0.0', {})).toThrow(/--accounts/)
    expect(() => wayInOf('::', {})).toThrow(NobodyToldWho)
    expect(wayInOf('::1', {})).toEqual({ kind: 'this-machine' })
  })

  it('sends whoever is not signed in to the sign-in and back; programs are told in their own form', async () => {
    const sent = await get('/advice?b=abc')
    expect([sent.status, sent.headers.get('location')]).toEqual([303, '/sign-in?to=%2Fadvice%3Fb%3Dabc'])
    const api = await app.request('http://localhost/api/advice', { method: 'POST', body: '{}' })
    expect(api.status).toBe(401)
    expect(await api.json()).toHaveProperty('problems')
    const { answer, cookie } = await signIn('ben')
    expect([answer.status, answer.headers.get('location')]).toEqual([303, '/kept'])
    expect(answer.headers.get('set-cookie')).toMatch(/HttpOnly; SameSite=Lax/)
    expect(await (await get('/advice?b=abc', cookie)).text()).toBe('page of /advice')
    expect(
      (await post('/sign-in', { name: 'ben', password: PASSWORD, to: '//evil.example' })).headers.get(
        'location',
      ),
    ).toBe('/')
  })

  it('says the same of a wrong name and a wrong password, and lets nobody try on and on', async () => {
    const said = async (name: string) => {
      const { answer } = await signIn(name, 'wrong')
      return [answer.status, text(await answer.text()).replaceAll(name, '')]
    }
    expect(await said('lou')).toEqual(await said('nobody'))
    for (let k = 0; k < 4; k++) await signIn('lou', 'wrong')
    const { answer } = await signIn('lou')
    expect(answer.status).toBe(429)
    expect(Number(answer.headers.get('retry-after'))).toBeGreaterThan(0)
    expect((await signIn('ben')).answer.status).toBe(303)
  })

  it('lets nobody try name after name from one place, though one of them be their own', async () => {
    const { people } = await keeping.store()
    // One name, so that most tries are refused before a password is looked at, which takes its time.
    for (let k = 0; k < MOST_FAILURES_FROM; k++) await people.signIn('guess', 'wrong', '198.51.100.7')
    const answer = await post('/sign-in', { name: 'ben', password: PASSWORD }, '', '198.51.100.7')
    expect(answer.status).toBe(429)
    expect((await post('/sign-in', { name: 'ben', password: PASSWORD }, '', '198.51.100.8')).status).toBe(303)
  })

  it('takes a network for one place, and whom a proxy on this machine names', () => {
    expect(senderBy('::ffff:203.0.113.5', '')).toBe('203.0.113.5')
    expect(senderBy('203.0.113.5', '198.51.100.7')).toBe('203.0.113.5')
    expect(senderBy('127.0.0.1', '1.2.3.4, 198.51.100.7')).toBe('198.51.100.7')
    expect(senderBy('2001:db8::1', '')).toBe(senderBy('2001:db8:0:0:ffff::2', ''))
    expect(senderBy('2001:db8:0:1::1', '')).not.toBe(senderBy('2001:db8::1', ''))
  })

  it('gives who knows the old password a new one, and ends the sittings of before', async () => {
    const { cookie } = await signIn('new-password')
    const token = await tokenFor(cookie)
    const change = (old: string, password: string) =>
      post('/people/password', { old, password, token }, cookie)
    expect((await change('wrong', `${PASSWORD} 2`)).status).toBe(422)
    expect((await change(PASSWORD, 'short')).status).toBe(422)
    expect((await post('/people/password', { old: PASSWORD, password: PASSWORD }, cookie)).status).toBe(403)
    const done = await change(PASSWORD, `${PASSWORD} 2`)
    expect(done.status).toBe(303)
    expect((await get('/kept', cookie)).status).toBe(303)
    const now = done.headers.get('set-cookie')!.split(';')[0]!
    expect((await get('/kept', now)).status).toBe(200)
    expect((await signIn('new-password')).answer.status).toBe(422)
  })

  it('lets readers read, authors keep and administrators say who may', async () => {
    const rea = await as('rea')
    const ben = await as('ben')
    const ada = await as('ada')
    const tokens = [await tokenFor(rea), await tokenFor(ben), await tokenFor(ada)] as const
    expect((await post('/kept', { b: brief, token: tokens[0] }, rea)).status).toBe(403)
    const at = (await post('/kept', { b: brief, token: tokens[1] }, ben)).headers.get('location')!
    expect(text(await (await get(at, rea)).text())).toContain('kept by ben')
    expect((await get('/people', ben)).status).toBe(403)
    expect((await get('/people', ada)).status).toBe(200)
    const made = { name: 'new', role: 'author', password: 'short', token: tokens[2] }
    expect((await post('/people', made, ada)).status).toBe(422)
    expect((await post('/people', { ...made, password: PASSWORD }, ada)).status).toBe(303)
    expect(
      (await post('/people/change', { name: 'ada', role: 'reader', token: tokens[2] }, ada)).status,
    ).toBe(422)
    await post('/people/change', { name: 'rea', gone: '1', token: tokens[2] }, ada)
    expect((await get('/kept', rea)).status).toBe(303)
    const trail = text(await (await get('/trail', ada)).text())
    for (const done of ['ben kept', 'ada added new as author', 'ada took rea away', 'ben signed in'])
      expect(trail).toContain(done)
  })

  it('shows no label that was not reviewed, and no word that is never said', async () => {
    const ada = await as('ada')
    const pages = ['/sign-in', '/people', '/people/password', '/kept', '/trail'].map((path) => get(path, ada))
    const html = (await Promise.all((await Promise.all(pages)).map((page) => page.text()))).join('')
    const names = (await (await keeping.store()).people.list('main')).map(({ name }) => name)
    const labels = [...labelsOn(html)].filter((label) => !names.includes(label))
    expect(labels).toContain('Take the new password')
    expect(labels.filter((label) => !reviewedLabels()[label])).toEqual([])
    for (const { never } of NEVER) expect(text(html)).not.toMatch(never)
  })

  it('takes no form without the token of its own sitting', async () => {
    const ben = await as('ben')
    const ada = await as('ada')
    expect((await post('/kept', { b: brief }, ben)).status).toBe(403)
    expect((await post('/kept', { b: brief, token: await tokenFor(ada) }, ben)).status).toBe(403)
  })

  it('keeps workspaces apart', async () => {
    const ben = await as('ben')
    const at = (await post('/kept', { b: brief, token: await tokenFor(ben) }, ben)).headers.get('location')!
    const eve = await as('eve')
    expect((await get(at, eve)).status).toBe(404)
    const away = { revision: '1', token: await tokenFor(eve) }
    expect((await post(`${at}/away`, away, eve)).status).toBe(404)
    expect(text(await (await get('/trail', eve)).text())).not.toContain('ben')
  })

  it('tells whoever watches, without signing in, that it answers and reaches what is kept', async () => {
    const answer = await get('/healthz')
    expect([answer.status, await answer.json()]).toEqual([200, { answers: true, store: 'reached' }])
  })

  it('forgets a sitting that was signed out', async () => {
    const { cookie } = await signIn('ben')
    await post('/sign-out', { token: await tokenFor(cookie) }, cookie)
    expect((await get('/kept', cookie)).status).toBe(303)
  })
})
