/** Name of the cookie that holds the key of a sitting. */
const NAME = 'gritwise'

/** The key a request brings along. */
export function keyIn(request: Request): string | null {
  const found = new RegExp(`(?:^|;\\s*)${NAME}=([\\w-]{43})(?:;|$)`).exec(request.headers.get('cookie') ?? '')
  return found?.[1] ?? null
}

/** Hands a key to a browser, or takes it back: no script sees it, no other site's form brings it along. */
export function cookieOf(key: string | null, request: Request): string {
  const secure =
    new URL(request.url).protocol === 'https:' || request.headers.get('x-forwarded-proto') === 'https'
  const life = key === null ? '; Max-Age=0' : ''
  return `${NAME}=${key ?? ''}; Path=/; HttpOnly; SameSite=Lax${secure ? '; Secure' : ''}${life}`
}
