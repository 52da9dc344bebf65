import type { Child } from 'hono/jsx'
import type { Problem } from '../../src/contract/brief.ts'
import { ErrorSummary } from '../brief/error-summary.tsx'
import { Page } from '../page.tsx'
import { SignedIn, type SignedInAs } from './signed-in.tsx'

export interface PeoplePageProps {
  readonly who: SignedInAs
  readonly workspace: string
  readonly people: readonly { readonly name: string; readonly role: string }[]
  readonly roles: readonly string[]
  readonly problem: Problem | null
  readonly leastPassword: number
}

/** The accounts of a workspace, and what each may do. */
export function PeoplePage({ who, workspace, people, roles, problem, leastPassword }: PeoplePageProps) {
  const hint = `At least ${leastPassword} characters.`
  return (
    <Page title={problem ? 'Error: People' : 'People'} packed={null} here="kept">
      {problem ? <ErrorSummary problems={[problem]} /> : null}
      <h1>People</h1>
      <SignedIn {...who} />
      <p class="standfirst">
        Workspace “{workspace}”. Readers see what is kept, authors keep, administrators say who may.
      </p>
      <ul class="people">
        {people.map(({ name, role }) => (
          <li>
            <h2>{name}</h2>
            <div class="forms">
              <Change name={name} token={who.token}>
                <select name="role" aria-label={`Role of ${name}`}>
                  {roles.map((one) => (
                    <option value={one} selected={one === role}>
                      {one}
                    </option>
                  ))}
                </select>
                <button type="submit" class="quiet" aria-label={`Change the role of ${name}`}>
                  Change
                </button>
              </Change>
              <Change name={name} token={who.token}>
                <input
                  type="password"
                  name="password"
                  autocomplete="new-password"
                  aria-label={`New password of ${name}`}
                />
                <button type="submit" class="quiet" aria-label={`Set the new password of ${name}`}>
                  Set the password
                </button>
              </Change>
              <Change name={name} token={who.token}>
                <input type="hidden" name="gone" value="1" />
                <button type="submit" class="quiet" aria-label={`Take ${name} away`}>
                  Take away
                </button>
              </Change>
            </div>
          </li>
        ))}
      </ul>
      <section aria-labelledby="add">
        <h2 id="add">Let somebody in</h2>
        <form method="post" action="/people">
          <input type="hidden" name="token" value={who.token} />
          <div class="field wide">
            <label for="name">Name</label>
            <input type="text" id="name" name="name" autocomplete="off" />
          </div>
          <div class="field wide">
            <label for="role">Role</label>
            <select id="role" name="role">
              {roles.map((one) => (
                <option value={one}>{one}</option>
              ))}
            </select>
          </div>
          <div class="field wide">
            <label for="password">Password</label>
            <p class="hint" id="password-hint">
              {hint}
            </p>
            <input
              type="password"
              id="password"
              name="password"
              autocomplete="new-password"
              aria-describedby="password-hint"
            />
          </div>
          <button type="submit">Let in</button>
        </form>
      </section>
    </Page>
  )
}

function Change({ name, token, children }: { name: string; token: string; children?: Child }) {
  return (
    <form method="post" action="/people/change">
      <input type="hidden" name="token" value={token} />
      <input type="hidden" name="name" value={name} />
      {children}
    </form>
  )
}
