import { isIPv6 } from 'node:net'
import type { MiddlewareHandler } from 'hono'
import { isThisMachine } from './own-names.ts'

const senders = new WeakMap<Request, string>()

/** Notes at the door from which machine a request comes. */
export const noteSender: MiddlewareHandler = (c, next) => {
  const { incoming } = (c.env ?? {}) as { incoming?: { socket?: { remoteAddress?: string } } }
  const from = incoming?.socket?.remoteAddress
  if (from) senders.set(c.req.raw, senderBy(from, c.req.header('x-forwarded-for') ?? ''))
  return next()
}

/** The machine that sent a request: the one at the other end, or whom a proxy on this machine names last. */
export function senderBy(from: string, forwarded: string): string {
  const last = forwarded.split(',').at(-1)!.trim()
  return networkOf(isThisMachine(plain(from)) && last !== '' ? last.slice(0, 60) : from)
}

const plain = (address: string) => address.replace(/^::ffff:(?=[\d.]+$)/i, '')

/** One household or firm: an address of IPv4, the first half of one of IPv6, whose other half its holder chooses. */
function networkOf(address: string): string {
  const bare = plain(address)
  if (!isIPv6(bare)) return bare
  const [start = '', end = ''] = bare.split('::')
  const groups = (part: string) => part.split(':').filter(Boolean)
  const filled = bare.includes('::') ? 8 - groups(start).length - groups(end).length : 0
  return [...groups(start), ...Array.from({ length: filled }, () => '0'), ...groups(end)]
    .slice(0, 4)
    .join(':')
}

/** Where a request comes from; null where nobody can tell. */
export const senderOf = (request: Request): string | null => senders.get(request) ?? null
