import type { AddressInfo } from 'node:net'
import { serve as listen, type ServerType } from '@hono/node-server'
import { createApp } from './app.ts'

export interface Where {
  /** 0 takes any free port. */
  readonly port: number
  /** Address to listen on, e.g. "127.0.0.1" (this machine only). */
  readonly listen: string
  /** Folders of rules laid over the book. */
  readonly rules?: readonly string[]
}

/** A brief travels in the address, so requests may carry longer lines than usual. */
const MOST_HEADER_BYTES = 64 * 1024

/** Starts the pages and the API, and says where they are. Throws RulebookError where the rules are not in order. */
export function serve({
  port,
  listen: hostname,
  rules,
}: Where): Promise<{ server: ServerType; address: string }> {
  return new Promise((resolve, reject) => {
    const server = listen(
      {
        fetch: createApp(undefined, rules).fetch,
        port,
        hostname,
        serverOptions: { maxHeaderSize: MOST_HEADER_BYTES },
      },
      (info: AddressInfo) => {
        const host = info.family === 'IPv6' ? `[${info.address}]` : info.address
        const address = `http://${host}:${info.port}/`
        console.log(`gritwise is at ${address}`)
        resolve({ server, address })
      },
    )
    server.once('error', reject)
  })
}
