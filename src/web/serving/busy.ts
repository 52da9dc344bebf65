import { HTTPException } from 'hono/http-exception'

/** Not now: the answer names the seconds after which asking again makes sense. */
export class Busy extends HTTPException {
  readonly retryAfterS: number

  constructor(message: string, retryAfterS: number) {
    super(503, { message })
    this.retryAfterS = retryAfterS
  }
}
