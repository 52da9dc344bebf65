import { leaveChange, withChanges } from '../text-first.ts'
import type { Answers } from './door.ts'

/**
 * A brief stands once in the address of its pages, /b/BRIEF/advice, and their links are relative to it: the same
 * links with the whole brief in each made two thirds of a page. Pages and views know nothing of it; they write
 * /advice?b=BRIEF, and such addresses go on to work.
 */
export const shortAddresses =
  (answers: Answers): Answers =>
  async (request) => {
    const url = new URL(request.url)
    const within = /^\/b\/([\w-]+)\/(.*)$/.exec(url.pathname)
    if (within) return briefPage(answers, request, url, within[1]!, within[2]!)
    const packed = url.searchParams.get('b')
    const move = isPageRequest(request, url) && packed !== null && /^[\w-]+$/.test(packed)
    if (move) return moved(shortened(url, packed))
    return relocated(await answers(request))
  }

/** Pages a person goes to; pictures, files, parts and whatever programs ask for stay where they are. */
function isPageRequest(request: Request, url: URL): boolean {
  return (
    request.method === 'GET' &&
    (request.headers.get('accept') ?? '').includes('text/html') &&
    !request.headers.has('hx-request') &&
    !/\.\w+$|^\/api\//.test(url.pathname)
  )
}

/** "/b/BRIEF/advice?print=1" for "/advice?b=BRIEF&print=1"; the start page of a brief is the brief itself. */
function shortened(url: URL, packed: string): string {
  const rest = new URLSearchParams(url.searchParams)
  rest.delete('b')
  const query = rest.size > 0 ? `?${rest}` : ''
  return `/b/${packed}${url.pathname === '/' ? '/brief' : url.pathname}${query}${url.hash}`
}

const moved = (location: string) => new Response(null, { status: 302, headers: { location } })

/** A redirect to a page of a brief leads to its short address at once. */
function relocated(response: Response): Response {
  const location = response.headers.get('location')
  if (!location?.startsWith('/') || response.status < 300 || response.status > 399) return response
  const url = new URL(location, 'http://here')
  const packed = url.searchParams.get('b')
  if (packed === null || !/^[\w-]+$/.test(packed)) return response
  const headers = new Headers(response.headers)
  headers.set('location', shortened(url, packed))
  return new Response(null, { status: response.status, headers })
}

async function briefPage(
  answers: Answers,
  request: Request,
  url: URL,
  packed: string,
  path: string,
): Promise<Response> {
  const inner = new URL(`/${path}`, url)
  for (const [key, value] of url.searchParams) inner.searchParams.append(key, value)
  inner.searchParams.set('b', packed)
  const asked = new Request(inner, request)
  const depth = depthOf(request, path)
  leaveChange(asked, (page) => withRelativeLinks(page, packed, depth))
  return withChanges(asked, relocated(await answers(asked)))
}

/** How many folders below the brief the page stands; of a part, the page that it is swapped into. */
function depthOf(request: Request, path: string): number {
  const current = request.headers.get('hx-current-url')
  const shown = current ? (/\/b\/[\w-]+\/([^?#]*)/.exec(current)?.[1] ?? path) : path
  return shown.split('/').length - 1
}

/** Links of the page to the same brief, without the brief: "/advice/trail?b=BRIEF&amp;id=x" → "trail?id=x" and so on. */
export function withRelativeLinks(page: string, packed: string, depth: number): string {
  const up = '../'.repeat(depth)
  const asked = `?b=${packed}`
  const parts: string[] = []
  let done = 0
  for (let at = page.indexOf(asked); at >= 0; at = page.indexOf(asked, at + 1)) {
    const quote = page.lastIndexOf('"/', at)
    const path = page.slice(quote + 2, at)
    LINK_END.lastIndex = at + asked.length
    const end = quote < done || !/^[a-z0-9./-]*$/.test(path) ? null : LINK_END.exec(page)
    if (!end) continue
    const [, query, hash = ''] = end
    parts.push(page.slice(done, quote + 1), up, path || 'brief', query ? `?${query}` : '', hash)
    done = LINK_END.lastIndex - 1
    at = done
  }
  return done === 0 ? page : parts.join('') + page.slice(done)
}

/** What may follow the brief in a link, up to the mark that ends it. */
const LINK_END = /(?:&amp;([^"#]*))?(#[^"]*)?"/y
