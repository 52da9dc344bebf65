import type { MiddlewareHandler } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { quoted } from '../../contract/quoted.ts'

const LOOPBACK = /^(?:(?:[\w-]+\.)*localhost|127(?:\.\d{1,3}){3}|\[?::1\]?)$/i

/** Whether an address or a name, without a port, is this machine's own. */
export const isThisMachine = (name: string): boolean => LOOPBACK.test(name)

/** Name or address without its port: "localhost" of "localhost:8317". */
export const nameOf = (host: string): string => host.replace(/:\d*$/, '').toLowerCase()

/**
 * Who asks a program that listens on this machine only asks it by a name of this machine. Any other name was pointed
 * here by somebody else, so that his pages count as ours to the browser and may read every answer. A proxy that hands
 * on its own name has it told with `names`; a program that listens to others cannot know what it is called.
 */
export function ownNames(listen: string, names: readonly string[]): MiddlewareHandler {
  const bare = listen === '::1' ? '[::1]' : listen
  if (!isThisMachine(bare) && names.length === 0) return (_, next) => next()
  const known = [bare, ...names].map((name) => name.toLowerCase())
  return async (c, next) => {
    const host = c.req.header('host')
    if (host !== undefined && !isThisMachine(nameOf(host)) && !known.includes(nameOf(host)))
      throw new HTTPException(403, {
        message: `This program is not called ${quoted(nameOf(host))}. Behind a proxy of that name, start it with --name ${quoted(nameOf(host))}.`,
      })
    await next()
  }
}
