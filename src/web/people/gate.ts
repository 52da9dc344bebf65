import { HTTPException } from 'hono/http-exception'
import type { People } from '../../store/people/people.ts'
import { type Keeping, unavailable } from '../kept-store/keeping.ts'
import { isThisMachine, nameOf } from '../serving/own-names.ts'
import { senderOf } from '../serving/sender.ts'
import { keyIn } from './cookie.ts'
import { tokenOf, type Visitor } from './visitor.ts'
import type { WayIn } from './way-in.ts'

/** The workspace of those whom nobody put into another. */
const MAIN = 'main'

/** Addresses of what is kept: only these ask the database when nobody signs in. */
const OF_THE_STORE = /^(?:\/b\/[\w-]+)?\/(?:kept|people|trail)(?:\/|$)/
const FOR_ALL = /^\/sign-in$/

/** What stands behind the gate is told who asks. */
export type Behind = (
  request: Request,
  env: { visitor: Visitor | null; sender: string | null },
) => Response | Promise<Response>

/** Lets in who may come; sends others to sign in, or away in words. Throws HTTPException. */
export function gate(wayIn: WayIn, keeping: Keeping, behind: Behind) {
  return async (request: Request): Promise<Response> => {
    const path = new URL(request.url).pathname
    const sender = senderOf(request)
    if (wayIn.kind === 'this-machine') {
      const visitor = OF_THE_STORE.test(path) ? await whoIsHere(request, keeping) : null
      return behind(request, { visitor, sender })
    }
    if (wayIn.kind === 'accounts' && FOR_ALL.test(path)) return behind(request, { visitor: null, sender })
    const visitor = await reached(keeping, (people) =>
      wayIn.kind === 'proxy'
        ? whomTheProxyNames(request, wayIn.header, people)
        : whoSignedIn(request, people),
    )
    return visitor ? behind(request, { visitor, sender }) : toSignIn(request)
  }
}

async function reached<Answer>(keeping: Keeping, ask: (people: People) => Promise<Answer>): Promise<Answer> {
  try {
    return await ask((await keeping.store()).people)
  } catch (error) {
    throw unavailable(error)
  }
}

/** Nobody signs in on one's own machine; but it must have been asked by its own name, so that no page elsewhere reaches it by another, and no proxy with a name of its own (--name) lets the world in. */
async function whoIsHere(request: Request, keeping: Keeping): Promise<Visitor> {
  if (!isThisMachine(nameOf(request.headers.get('host') ?? new URL(request.url).host)))
    throw new HTTPException(403, {
      message: 'What is kept here is reached by the name of this machine only.',
    })
  const token = await reached(keeping, async (people) => tokenOf(await people.tokenKey(), '', null))
  return { name: '', workspace: MAIN, role: 'administrator', key: null, token }
}

/** The proxy says who; the accounts say what that one may do, author where there is none. */
async function whomTheProxyNames(request: Request, header: string, people: People): Promise<Visitor> {
  const name = request.headers.get(header)?.trim() ?? ''
  if (name === '' || name.length > 200)
    throw new HTTPException(403, { message: 'The proxy in front of this program does not say who you are.' })
  const person = (await people.named(name)) ?? { name, workspace: MAIN, role: 'author' as const }
  return { ...person, key: null, token: tokenOf(await people.tokenKey(), name, null) }
}

async function whoSignedIn(request: Request, people: People): Promise<Visitor | null> {
  const key = keyIn(request)
  const person = key === null ? null : await people.holding(key)
  return person && { ...person, key, token: tokenOf(await people.tokenKey(), person.name, key) }
}

/** A person is led to the sign-in page and back; programs and parts of pages are told. */
function toSignIn(request: Request): Response {
  const url = new URL(request.url)
  const reads = request.method === 'GET' && (request.headers.get('accept') ?? '').includes('text/html')
  if (!reads || url.pathname.startsWith('/api/'))
    throw new HTTPException(401, {
      message: 'Sign in first: POST name and password to /sign-in and bring its cookie along.',
    })
  const location = `/sign-in?to=${encodeURIComponent(url.pathname + url.search)}`
  if (request.headers.get('hx-request') === 'true')
    return new Response(null, { status: 200, headers: { 'hx-redirect': '/sign-in' } })
  return new Response(null, { status: 303, headers: { location } })
}
