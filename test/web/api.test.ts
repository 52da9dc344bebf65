import { describe, expect, it } from 'vitest'
import { demos } from '../../src/brief/demos.ts'
import { adviceSchema } from '../../src/contract/index.ts'
import { openapi } from '../../src/web/api/openapi.ts'
import { createApp, createPages } from '../../src/web/app.ts'
import { brief } from '../views/fixture.ts'
import { app } from './stand-in.ts'

const post = (body: string, type: string | null = 'application/json') =>
  app.request('/api/advice', { method: 'POST', body, headers: type === null ? {} : { 'content-type': type } })

describe('POST /api/advice', () => {
  it('gives the advice on a brief', async () => {
    const answer = await post(JSON.stringify(brief), 'application/json; charset=utf-8')
    expect(answer.status).toBe(200)
    expect(adviceSchema.safeParse(await answer.json()).success).toBe(true)
  })

  it('gives real advice in the shape of the contract', async () => {
    const answer = await createApp().request('/api/advice', {
      method: 'POST',
      body: JSON.stringify(demos.find(({ id }) => id === 'beans')?.brief),
      headers: { 'content-type': 'application/json' },
    })
    expect(answer.status).toBe(200)
    expect(adviceSchema.safeParse(await answer.json()).error?.issues ?? []).toEqual([])
  })

  it('names what is wrong with a brief, and where', async () => {
    const answer = await post(JSON.stringify({ ...brief, points: [{ heigthMm: 3 }] }))
    expect(answer.status).toBe(422)
    expect(await answer.json()).toEqual({
      problems: [{ path: 'points.0.heigthMm', message: expect.stringContaining('did you mean heightMm?') }],
    })
  })

  it('takes JSON only, so that no form of another site can send one', async () => {
    for (const type of ['text/plain', 'application/x-www-form-urlencoded', null]) {
      const answer = await post(JSON.stringify(brief), type)
      expect(answer.status, String(type)).toBe(415)
      expect(await answer.json()).toMatchObject({
        problems: [{ message: expect.stringContaining('application/json') }],
      })
    }
  })

  it('says so when the body is no JSON, or too large', async () => {
    expect((await post('{"product":')).status).toBe(400)
    const large = await post(JSON.stringify({ ...brief, title: 'x'.repeat(600_000) }))
    expect(large.status).toBe(413)
    expect(await large.json()).toMatchObject({ problems: [{ message: expect.stringContaining('512 kB') }] })
  })
})

describe('GET /api/openapi.json', () => {
  it('describes every address of the API, and no other', () => {
    const served = createPages().routes.filter(
      ({ path, method }) => path.startsWith('/api/') && method !== 'ALL',
    )
    const described = Object.entries(openapi.paths).flatMap(([path, methods]) =>
      Object.keys(methods).map((method) => `${method.toUpperCase()} ${path}`),
    )
    expect(described.sort()).toEqual(served.map(({ path, method }) => `${method} ${path}`).sort())
  })

  it('is OpenAPI 3.1 whose references all lead somewhere', async () => {
    const document = (await (await app.request('/api/openapi.json')).json()) as typeof openapi
    expect(document.openapi).toBe('3.1.0')
    const refs = [...JSON.stringify(document).matchAll(/"\$ref":"([^"]+)"/g)].map(([, ref]) => ref ?? '')
    expect(refs).toContain('#/components/schemas/Brief')
    for (const ref of refs) {
      const target = ref
        .replace(/^#\//, '')
        .split('/')
        .reduce<unknown>((node, key) => (node as Record<string, unknown> | undefined)?.[key], document)
      expect(target, ref).toBeTypeOf('object')
    }
  })

  it('takes a brief as a person may give it: what has a default may be left out', () => {
    const { Brief } = openapi.components.schemas as unknown as Record<
      string,
      { required: string[]; additionalProperties: boolean }
    >
    expect(Brief?.required).toEqual(['product', 'points', 'contaminants'])
    expect(Brief?.additionalProperties).toBe(false)
  })
})
