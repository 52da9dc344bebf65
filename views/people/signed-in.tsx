export interface SignedInAs {
  readonly name: string
  readonly role: string
  readonly token: string
  /** True where one signs in and out here; false where a proxy does it, or nobody. */
  readonly signsOut: boolean
}

/** Who is here, the way to the others and out; nothing where nobody signs in. */
export function SignedIn({ name, role, token, signsOut }: SignedInAs) {
  if (name === '') return null
  return (
    <form method="post" action="/sign-out" class="signed-in">
      <input type="hidden" name="token" value={token} />
      <span>
        Signed in as {name}, {role}
      </span>
      {role === 'administrator' ? <a href="/people">People</a> : null}
      <a href="/trail">Who changed what</a>
      {signsOut ? <a href="/people/password">Your password</a> : null}
      {signsOut ? (
        <button type="submit" class="quiet">
          Sign out
        </button>
      ) : null}
    </form>
  )
}
