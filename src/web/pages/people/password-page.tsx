import type { Context } from 'hono'
import type { ContentfulStatusCode } from 'hono/utils/http-status'
import { PasswordPage } from '../../../../views/people/password-page.tsx'
import type { Problem } from '../../../contract/index.ts'
import { LEAST_PASSWORD, wrongPassword } from '../../../store/people/account.ts'
import { postedForm } from '../../asked/form-answers.ts'
import { cookieOf } from '../../people/cookie.ts'
import { senderIn, type Visitor } from '../../people/visitor.ts'
import type { Handler } from '../../people/within.ts'
import { showPage } from '../../show-page.ts'
import { tooOften } from './sign-in-page.tsx'
import { signedInAs } from './signed-in-as.ts'

const shown = (c: Context, visitor: Visitor, problem: Problem | null, status: ContentfulStatusCode = 422) =>
  showPage(
    c,
    <PasswordPage who={signedInAs(visitor)} problem={problem} leastPassword={LEAST_PASSWORD} />,
    problem ? status : 200,
  )

export const passwordPage: Handler = async (c, _store, visitor) => shown(c, visitor, null)

/** One's own password, for who knows the old one. */
export const changePassword: Handler = async (c, store, visitor) => {
  const form = await postedForm(c)
  const said = (name: string) => (typeof form[name] === 'string' ? form[name] : '')
  const wrong = wrongPassword(said('password'))
  if (wrong) return shown(c, visitor, { path: 'password', message: wrong })
  const done = await store.people.changeOwn(visitor.name, said('old'), said('password'), senderIn(c))
  if (done.kind === 'too-often') {
    c.header('retry-after', String(done.retryAfterS))
    return shown(c, visitor, { path: 'old', message: tooOften(done.retryAfterS) }, 429)
  }
  if (done.kind === 'wrong') return shown(c, visitor, { path: 'old', message: 'That is not your password' })
  c.header('set-cookie', cookieOf(done.key, c.req.raw))
  return c.redirect('/kept', 303)
}
