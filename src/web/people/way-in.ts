import { isThisMachine } from '../serving/own-names.ts'

/** Who may come in: everybody on this machine, whom a proxy in front names in a header, or who signs in. */
export type WayIn =
  | { readonly kind: 'this-machine' }
  | { readonly kind: 'proxy'; readonly header: string }
  | { readonly kind: 'accounts' }

/** Other machines would reach the program, and nobody was told who may come. */
export class NobodyToldWho extends Error {}

/** How people come in, by where the program listens. Throws NobodyToldWho where it would stand open to other machines. */
export function wayInOf(
  listen: string,
  { userHeader = null, accounts = false }: { userHeader?: string | null; accounts?: boolean },
): WayIn {
  if (userHeader !== null && accounts)
    throw new NobodyToldWho(
      '--accounts and --user-header exclude one another: either people sign in here, or a proxy signs them in',
    )
  if (userHeader !== null) return { kind: 'proxy', header: userHeader }
  if (accounts) return { kind: 'accounts' }
  if (isThisMachine(listen)) return { kind: 'this-machine' }
  throw new NobodyToldWho(
    `--listen ${listen} would let other machines in, and nothing says who may come: add --accounts (people sign in; "gritwise people add NAME" makes the first account), or --user-header NAME where a proxy in front signs them in`,
  )
}
