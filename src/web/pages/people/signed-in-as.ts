import type { SignedInAs } from '../../../../views/people/signed-in.tsx'
import type { Visitor } from '../../people/visitor.ts'

/** Who is here, as the pages of what is kept show it. */
export const signedInAs = ({ name, role, token, key }: Visitor): SignedInAs => ({
  name,
  role,
  token,
  signsOut: key !== null,
})
