import type { Hono } from 'hono'
import { demos } from '../../../src/brief/demos.ts'
import { packBrief, unpackBrief } from '../../../src/web/asked/packed-brief.ts'

export interface CrawledPage {
  readonly path: string
  readonly html: string
}

/** The demo whose pages are followed furthest; of the others one page of each kind is read. */
const FURTHEST = 'sauce-jar'
const OF_A_KIND = 2
/** Pages that draw for seconds are read with one brief only. */
const SLOW = ['/card', '/exercises/spot', '/exercises/dial']

/** A brief with machines from quotes, whose rows of the form no link leads to. */
const QUOTED = packBrief({
  ...demos[0]!.brief,
  equipment: [
    'xray-single',
    { id: 'quoted-1', label: 'metal detector around a pipe', family: 'coil', frequenciesKHz: [100, 300] },
  ],
})

/** The demo a brief was made of, whatever was filled in or changed since; each changed brief is worked out anew. */
function demoOf(packed: string): string {
  const said = unpackBrief(packed)
  const title = 'brief' in said ? (said.brief as { title?: string }).title : undefined
  return demos.find(({ brief }) => brief.title === title)?.id ?? ''
}

/** What an address carries that does not change what kind of page it leads to. */
const SAME_KIND = [
  'b',
  'done',
  'g',
  'q',
  'began',
  'ended',
  'name',
  'trainer',
  'lesson',
  'people',
  'pass',
  'months',
]
const FILES = /\.(?:csv|png|json)$/

/** What kind of page an address leads to: its path, the names of what it carries, its brief; and how many are read. */
function kindOf(path: string): { kind: string; most: number } {
  const url = new URL(path, 'http://house.test')
  if (FILES.test(url.pathname)) return { kind: '', most: 0 }
  const slow = SLOW.includes(url.pathname)
  const b = url.searchParams.get('b') ?? ''
  if (b === QUOTED) return { kind: 'quoted', most: 1 }
  const demo = demoOf(b)
  if (demo === '' && b !== '') return { kind: '', most: 0 }
  if (slow) return { kind: url.pathname, most: demo === FURTHEST ? 1 : 0 }
  const bare = url.pathname.replace(/^\/rules\/.+/, '/rules/:id')
  const inLesson = url.searchParams.has('lesson')
  const one = bare.replace(/^\/exercises\/(?!record|lesson|spot|dial).+/, '/exercises/:id')
  if (inLesson) return { kind: `${one} in a lesson ${demo}`, most: 2 * OF_A_KIND }
  if (demo !== FURTHEST && demo !== '') return { kind: `${one} ${demo}`, most: 1 }
  const names = [...new Set(url.searchParams.keys())].filter((name) => !SAME_KIND.includes(name)).sort()
  return { kind: `${bare}?${names.join('&')} ${demo}`, most: OF_A_KIND }
}

/** Every kind of page that can be reached by links from the first one, with the demo briefs. */
export async function crawl(app: Hono): Promise<CrawledPage[]> {
  const pages: CrawledPage[] = []
  const met = new Set<string>()
  const kinds = new Map<string, number>()
  const waiting = ['/', ...demos.map(({ brief }) => `/advice?b=${packBrief(brief)}`), `/brief?b=${QUOTED}`]
  for (let path = waiting.shift(); path !== undefined; path = waiting.shift()) {
    if (met.has(path)) continue
    met.add(path)
    const { kind, most } = kindOf(path)
    const before = kinds.get(kind) ?? 0
    if (before >= most) continue
    kinds.set(kind, before + 1)
    const answer = await app.request(path)
    if (!(answer.headers.get('content-type') ?? '').startsWith('text/html')) continue
    const html = await answer.text()
    if (answer.status !== 200 && answer.status !== 422) throw new Error(`${path} answers ${answer.status}`)
    pages.push({ path, html })
    for (const [, href = ''] of html.matchAll(/href="(\/[^"#]*)/g)) {
      if (!href.startsWith('/assets/')) waiting.push(href.replaceAll('&amp;', '&'))
    }
  }
  return pages
}

const NAMED: Readonly<Record<string, string>> = {
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&#39;': "'",
}

/** What a reader sees: no tags, no head but the title, nothing typed into boxes, nothing shown as code. */
export function visibleText(html: string): string {
  return html
    .replace(/<(script|style|textarea|datalist|code|pre)\b[\s\S]*?<\/\1>/g, ' ')
    .replace(/<title>([^<]*)<\/title>/g, ' $1 ')
    .replace(/<[^>]+>/g, ' ')
    .replace(/&(?:amp|lt|gt|quot|#39);/g, (entity) => NAMED[entity] ?? entity)
    .replace(/\s+/g, ' ')
    .trim()
}
