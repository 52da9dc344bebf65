import type { Context } from 'hono'
import { PeoplePage } from '../../../../views/people/people-page.tsx'
import type { Problem } from '../../../contract/index.ts'
import { LEAST_PASSWORD, wrongName, wrongPassword } from '../../../store/people/account.ts'
import { ROLES, type Role } from '../../../store/people/people.ts'
import type { Store } from '../../../store/store.ts'
import { postedForm } from '../../asked/form-answers.ts'
import type { Visitor } from '../../people/visitor.ts'
import type { Handler } from '../../people/within.ts'
import { showPage } from '../../show-page.ts'
import { signedInAs } from './signed-in-as.ts'

async function shown(c: Context, store: Store, visitor: Visitor, problem: Problem | null) {
  const { workspace } = visitor
  const page = (
    <PeoplePage
      who={signedInAs(visitor)}
      workspace={workspace}
      people={await store.people.list(workspace)}
      roles={ROLES}
      problem={problem}
      leastPassword={LEAST_PASSWORD}
    />
  )
  return showPage(c, page, problem ? 422 : 200)
}

export const peoplePage: Handler = (c, store, visitor) => shown(c, store, visitor, null)

async function posted(c: Context) {
  const form = await postedForm(c)
  return (name: string) => (typeof form[name] === 'string' ? form[name] : null)
}

const roleIn = (text: string | null): Role | null => ROLES.find((role) => role === text) ?? null

/** Lets somebody in. */
export const addPerson: Handler = async (c, store, visitor) => {
  const said = await posted(c)
  const name = (said('name') ?? '').trim()
  const password = said('password') ?? ''
  const role = roleIn(said('role')) ?? 'reader'
  const wrong = problem('name', wrongName(name)) ?? problem('password', wrongPassword(password))
  if (wrong) return shown(c, store, visitor, wrong)
  const added = await store.people.add({ name, workspace: visitor.workspace, role }, password, visitor.name)
  if (!added) return shown(c, store, visitor, { path: 'name', message: 'That name is taken; give another' })
  return c.redirect('/people', 303)
}

const problem = (path: string, message: string | null): Problem | null =>
  message === null ? null : { path, message }

/** Changes a role or a password, or takes an account away. */
export const changePerson: Handler = async (c, store, visitor) => {
  const said = await posted(c)
  const name = said('name') ?? ''
  const role = roleIn(said('role'))
  const password = said('password')
  const wrong = password === null ? null : problem('', wrongPassword(password))
  if (wrong) return shown(c, store, visitor, wrong)
  const change =
    password !== null ? { password } : said('gone') !== null ? { gone: true as const } : role && { role }
  if (!change) return shown(c, store, visitor, { path: '', message: 'Choose a role' })
  const done = await store.people.change(visitor.workspace, name, change, visitor.name)
  if (done) return c.redirect('/people', 303)
  const message = `${name} is not here, or is the last administrator, who cannot go`
  return shown(c, store, visitor, { path: '', message })
}
