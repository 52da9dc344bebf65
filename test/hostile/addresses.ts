import { demos } from '../../src/brief/demos.ts'
import { writeForm } from '../../src/brief/form/form-writing.ts'
import { createApp, createPages } from '../../src/web/app.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { MACHINE_WORDS, readable } from './machine-words.ts'

const app = createApp()
const bars = demos.find(({ id }) => id === 'mince')!.brief
const b = packBrief(bars)
const form = Object.entries(writeForm(bars))

const ADDRESSES = [
  ...new Set(
    createPages()
      .routes.filter(({ method }) => method !== 'ALL')
      .map(({ method, path }) => `${method} ${path}`),
  ),
]

/** What the pages ask for in their addresses and forms. */
const FIELDS = [
  'point',
  'contaminant',
  'machine',
  'machines',
  'equipment',
  'input',
  'angle',
  'id',
  'first',
  'second',
  'threshold',
  'value',
  'without',
  'pasted',
  'x',
  'only',
  'done',
  'q',
  'g',
  'guess',
  'words',
  'present',
  'name',
  'trainer',
  'print',
  'seed',
  'placement',
  'kv-xray-single',
  'sizes-0',
  'picture',
  'subject',
  'family',
  'evidence',
  'outcome',
  'material',
  'shape',
  'size',
  'length',
  'face',
  'csv',
  'file',
  'brief',
  'link',
  'confidence',
  'power',
  'sizeMm',
  'action',
  'points.0.heightMm',
  'points.99999.name',
  'quoted.0.base',
  'machines',
  'contaminants.0.material',
  'equipment.x',
  'brief-json',
]
const VALUES = [
  '',
  ' ',
  '0',
  '-1',
  '1',
  '99',
  '1e309',
  // Read as no number like "NaN", and not mistaken for a word of ours where it is given back.
  'nan',
  '1,5',
  '0x10',
  'p0',
  'coil-single',
  'xray-single',
  'sphere',
  'flake',
  'ss304',
  'quartz',
  '../../x',
  '__proto__',
  'constructor',
  '<b>"&',
  '\u0000',
  '\ud83d',
  '💀'.repeat(40),
  'a'.repeat(3000),
  '['.repeat(3000),
  '{"a":1}',
  '[1,2]',
  '{"rules":[{}]}',
  '{"thresholds":[null]}',
  'add:points',
  'remove:points.0',
  'add:product',
  'remove:x.1',
  'check',
  'equipment,piece\n=1+1,2',
  '1_2_3~x!9',
  '2 mm',
  '1 in 8',
]
const REFUSED = [400, 404, 413, 415, 422]
const pick = <T>(list: readonly T[], chance: () => number): T => list[Math.floor(chance() * list.length)]!

/** One request with hostile fields to any address of the program; what is wrong with its answer, empty where nothing is. */
export async function attackAddress(chance: () => number): Promise<string[]> {
  const [method = '', pattern = ''] = pick(ADDRESSES, chance).split(' ')
  const path = pattern.replace(/:\w+/, () =>
    encodeURIComponent(pick(VALUES, chance).replace(/[\ud800-\udfff]/gu, 'x')),
  )
  const fields = Array.from({ length: Math.floor(chance() * 6) }, (): [string, string] => [
    pick(FIELDS, chance),
    pick(VALUES, chance),
  ])
  const query = new URLSearchParams(chance() < 0.9 ? [['b', b]] : [])
  if (method === 'GET') for (const field of fields) query.append(...field)
  const init = method === 'GET' ? {} : posted(pattern.startsWith('/api/'), fields, chance)
  const answer = await app.request(`${path}?${query}`, init)
  const said = readable(await answer.text())
  const where = `${method} ${path}?${fields.map(([key, value]) => `${key}=${value.slice(0, 30)}`).join('&')}: ${answer.status}`
  if (answer.status < 400) return []
  if (!REFUSED.includes(answer.status)) return [where]
  const machine = MACHINE_WORDS.exec(said)
  return machine ? [`${where} says "${said.slice(Math.max(0, machine.index - 60), machine.index + 40)}"`] : []
}

function posted(api: boolean, fields: readonly [string, string][], chance: () => number): RequestInit {
  if (!api) {
    const kept = chance() < 0.5 ? form : []
    return { method: 'POST', body: new URLSearchParams([...kept, ...fields]) }
  }
  const group = Object.fromEntries([
    ['brief', bars],
    ...fields.map(([key, value]) => [key, chance() < 0.5 ? value : Number(value)]),
  ])
  return { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(group) }
}
