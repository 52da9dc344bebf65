import { Hono } from 'hono'
import { compress } from 'hono/compress'
import type { Answers } from './door.ts'
import { shortAddresses } from './short-address.ts'
import { termsLinked } from './terms-linked.ts'

/** Answers as they leave, words of the glossary linked, under short addresses and compressed: done where they are made, not in the server's own thread. */
export const dressed = (answers: Answers): Answers => compressed(shortAddresses(termsLinked(answers)))

export function compressed(answers: Answers): Answers {
  const app = new Hono()
  app.use(compress())
  app.all('*', (c) => answers(c.req.raw))
  return (request) => app.fetch(request)
}
