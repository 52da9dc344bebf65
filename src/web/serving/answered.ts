import { createHash } from 'node:crypto'
import { Kept } from '../kept.ts'
import { SAME_AGAIN } from '../same-again.ts'
import { today } from '../today.ts'
import type { CarriedAnswer, CarriedRequest } from './carried.ts'

/** Answers as bytes, those of a large advice about 5 MB each. */
const KEPT_BYTES = 64 * 1024 * 1024
/** Headers that may change an answer. */
const READ = ['accept', 'accept-encoding', 'content-type', 'hx-current-url', 'hx-request']

/** Answers that a worker has marked as the same again: given once more without asking a worker. */
export class Answered {
  readonly #kept = new Kept<CarriedAnswer>(KEPT_BYTES)

  get = (key: string): CarriedAnswer | undefined => this.#kept.get(key)

  /** Keeps a marked answer; gives it as it goes out, without the mark. */
  keep(key: string, answer: CarriedAnswer): CarriedAnswer {
    const headers = answer.headers.filter(([name]) => name !== SAME_AGAIN)
    if (headers.length === answer.headers.length) return answer
    const bare = { ...answer, headers }
    if (answer.status === 200) this.#kept.set(key, bare, bare.body.byteLength)
    return bare
  }
}

/** An address with its questions by name: a form and a script may ask the same in another order. */
function sorted(url: string): string {
  const address = new URL(url)
  address.searchParams.sort()
  return address.href
}

/** What an answer depends on, beside the rule book: the request as far as it is read, and the day. */
export function keyOf({ method, url, headers, body }: CarriedRequest): string {
  const hash = createHash('sha256').update(`${today()}\n${method} ${sorted(url)}\n`)
  for (const [name, value] of headers) if (READ.includes(name)) hash.update(`${name}: ${value}\n`)
  return hash.update(body ? new Uint8Array(body) : '').digest('base64')
}
