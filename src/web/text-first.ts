/** What a wrapper changes in the text of a page answered with this status. */
export type OnText = (page: string, status: number) => string

const waiting = new WeakMap<Request, OnText>()

/**
 * Leaves a change to whoever draws the page that this request asks for: done before the page becomes bytes, it saves
 * reading and writing some hundred kB again, which takes longer than drawing them.
 */
export function leaveChange(request: Request, change: OnText): void {
  const before = waiting.get(request)
  waiting.set(request, before ? (page, status) => change(before(page, status), status) : change)
}

/** The changes left for this request, each taken once. */
export function takeChanges(request: Request): OnText {
  const change = waiting.get(request)
  waiting.delete(request)
  return change ?? ((page) => page)
}

const isPage = (answer: Response) => (answer.headers.get('content-type') ?? '').startsWith('text/html')

/**
 * The answer with what was left to change and nobody took, byte by byte: what is changed is ASCII, and what stands
 * around it is handed on untouched.
 */
export async function withChanges(request: Request, answer: Response): Promise<Response> {
  if (!waiting.has(request) || !isPage(answer)) return answer
  const change = takeChanges(request)
  const page = Buffer.from(await answer.arrayBuffer()).toString('latin1')
  const headers = new Headers(answer.headers)
  headers.delete('content-length')
  return new Response(Buffer.from(change(page, answer.status), 'latin1'), { status: answer.status, headers })
}
