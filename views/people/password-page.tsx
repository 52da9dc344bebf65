import type { Problem } from '../../src/contract/brief.ts'
import { ErrorSummary } from '../brief/error-summary.tsx'
import { Page } from '../page.tsx'
import { SignedIn, type SignedInAs } from './signed-in.tsx'

export interface PasswordPageProps {
  readonly who: SignedInAs
  readonly problem: Problem | null
  readonly leastPassword: number
}

/** A new password for oneself; other browsers that are signed in have to do so again. */
export function PasswordPage({ who, problem, leastPassword }: PasswordPageProps) {
  return (
    <Page title={`${problem ? 'Error: ' : ''}Your password`} packed={null} here="kept">
      {problem ? <ErrorSummary problems={[problem]} /> : null}
      <h1>Your password</h1>
      <SignedIn {...who} />
      <form method="post" action="/people/password">
        <input type="hidden" name="token" value={who.token} />
        <div class="field wide">
          <label for="old">Present password</label>
          <input type="password" id="old" name="old" autocomplete="current-password" />
        </div>
        <div class="field wide">
          <label for="password">New password</label>
          <p class="hint" id="password-hint">
            At least {leastPassword} characters. Wherever else you are signed in, you sign in again.
          </p>
          <input
            type="password"
            id="password"
            name="password"
            autocomplete="new-password"
            aria-describedby="password-hint"
          />
        </div>
        <button type="submit">Take the new password</button>
      </form>
    </Page>
  )
}
