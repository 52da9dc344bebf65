import type { Problem } from '../../src/contract/brief.ts'
import { ErrorSummary } from '../brief/error-summary.tsx'
import { Page } from '../page.tsx'

export interface SignInPageProps {
  /** Where to go afterwards. */
  readonly to: string
  readonly name: string
  readonly problem: Problem | null
}

/** Name and password; a wrong one is said without telling which of the two. */
export function SignInPage({ to, name, problem }: SignInPageProps) {
  return (
    <Page title={problem ? 'Error: Sign in' : 'Sign in'} packed={null} here="sign-in">
      {problem ? <ErrorSummary problems={[problem]} /> : null}
      <h1>Sign in</h1>
      <form method="post" action="/sign-in">
        <input type="hidden" name="to" value={to} />
        <div class="field wide">
          <label for="name">Name</label>
          <input type="text" id="name" name="name" value={name} autocomplete="username" />
        </div>
        <div class="field wide">
          <label for="password">Password</label>
          <input type="password" id="password" name="password" autocomplete="current-password" />
        </div>
        <button type="submit">Sign in</button>
      </form>
    </Page>
  )
}
