import type { Context } from 'hono'
import type { ContentfulStatusCode } from 'hono/utils/http-status'
import { SignInPage } from '../../../../views/people/sign-in-page.tsx'
import { postedForm } from '../../asked/form-answers.ts'
import { type Keeping, unavailable } from '../../kept-store/keeping.ts'
import { cookieOf } from '../../people/cookie.ts'
import { senderIn } from '../../people/visitor.ts'
import type { Handler } from '../../people/within.ts'
import { showPage } from '../../show-page.ts'

/** A page of this program only: nobody is sent elsewhere by a link to the sign-in. */
const ownPath = (to: unknown): string =>
  typeof to === 'string' && /^\/(?![/\\])/.test(to) && !to.startsWith('/sign-in') ? to : '/'

export const signInPage = (c: Context) =>
  showPage(c, <SignInPage to={ownPath(c.req.query('to'))} name="" problem={null} />)

const LONGEST = 200

export const tooOften = (retryAfterS: number) =>
  `Too many wrong passwords, for this name or from here. Try again in ${Math.ceil(retryAfterS / 60)} minutes`

/** Signs in: the same words whether the name or the password is wrong. */
export const sendSignIn =
  (keeping: Keeping) =>
  async (c: Context): Promise<Response> => {
    const form = await postedForm(c)
    const said = (name: string) => (typeof form[name] === 'string' ? form[name].slice(0, LONGEST) : '')
    const to = ownPath(form.to)
    const name = said('name').trim()
    const refused = (message: string, status: ContentfulStatusCode) =>
      showPage(c, <SignInPage to={to} name={name} problem={{ path: 'name', message }} />, status)
    if (name === '' || said('password') === '') return refused('Enter your name and your password', 422)
    try {
      const signed = await (await keeping.store()).people.signIn(name, said('password'), senderIn(c))
      if (signed.kind === 'too-often') {
        c.header('retry-after', String(signed.retryAfterS))
        return refused(tooOften(signed.retryAfterS), 429)
      }
      if (signed.kind === 'wrong') return refused('That name and password do not belong together', 422)
      c.header('set-cookie', cookieOf(signed.key, c.req.raw))
      return c.redirect(to, 303)
    } catch (error) {
      throw unavailable(error)
    }
  }

export const signOut: Handler = async (c, store, { key }) => {
  if (key !== null) await store.people.signOut(key)
  c.header('set-cookie', cookieOf(null, c.req.raw))
  return c.redirect('/sign-in', 303)
}
