import { type KeptThing, KINDS, type Kind } from '../../src/store/kept.ts'
import { Page } from '../page.tsx'
import { SignedIn, type SignedInAs } from '../people/signed-in.tsx'
import { KIND_WORDS } from './kind-words.ts'

export interface KeptPageProps {
  readonly who: SignedInAs
  /** Authors and administrators. */
  readonly mayKeep: boolean
  readonly packed: string | null
  /** Of the brief in hand. */
  readonly title: string | null
  /** Machines and materials of one's own in it. */
  readonly own: number
  /** The one kind shown; null for all. */
  readonly kind: Kind | null
  readonly things: readonly KeptThing[]
  /** The last one shown, where more follow. */
  readonly next: string | null
  /** "added-changed-same" after a file was brought in. */
  readonly imported: string | null
}

/** "2026-11-27 19:05" of a time as it is kept; UTC. */
export const moment = (at: string) => at.slice(0, 16).replace('T', ' ')

/** What is kept, and the brief in hand to be kept. */
export function KeptPage(props: KeptPageProps) {
  const { who, mayKeep, packed, title, own, kind, things, next, imported } = props
  const [added, changed, same] = /^\d+-\d+-\d+$/.test(imported ?? '') ? imported!.split('-') : []
  return (
    <Page title="Kept" packed={packed} here="kept">
      <h1>Kept</h1>
      <SignedIn {...who} />
      <p class="standfirst">
        With every revision. Nothing has to be kept: a brief also travels in the address of its pages.
      </p>
      {who.name === '' ? (
        <p>
          <a href="/trail">Who changed what</a>
        </p>
      ) : null}
      {added === undefined ? null : (
        <p role="status">
          Brought in: {added} new, {changed} with a new revision, {same} the same as here.
        </p>
      )}
      {packed && mayKeep ? (
        <div class="acts">
          <Keep packed={packed} token={who.token} what="brief" words={`Keep “${title}” as a new brief`} />
          <Keep packed={packed} token={who.token} what="advice" words="Keep its advice of today" quiet />
          {own > 0 ? (
            <Keep
              packed={packed}
              token={who.token}
              what="own"
              words="Keep its own machines and materials for other briefs"
              quiet
            />
          ) : null}
        </div>
      ) : null}
      <Kinds kind={kind} packed={packed} />
      {things.length === 0 ? (
        <p>Nothing {kind ? 'of this kind ' : ''}is kept yet.</p>
      ) : (
        <section class="scroll" aria-label="Kept" tabindex={0}>
          <table class="kept-table">
            <thead>
              <tr>
                <th scope="col">Name</th>
                <th scope="col">What</th>
                <th scope="col">Revision</th>
                <th scope="col">Changed (UTC)</th>
              </tr>
            </thead>
            <tbody>
              {things.map((thing) => (
                <tr>
                  <th scope="row">
                    <a href={`/kept/${thing.id}${packed ? `?b=${packed}` : ''}`}>{thing.title}</a>
                  </th>
                  <td>{KIND_WORDS[thing.kind].one}</td>
                  <td>{thing.revision}</td>
                  <td>{moment(thing.changedAt)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
      {next ? (
        <p>
          <a href={`/kept?after=${next}${kind ? `&kind=${kind}` : ''}`}>Earlier ones</a>
        </p>
      ) : null}
      <section aria-labelledby="file">
        <h2 id="file">All of it as a file</h2>
        <p>
          <a href="/kept/export.json" download="">
            Take everything out (JSON)
          </a>
        </p>
        {mayKeep ? (
          <form method="post" action="/kept/import" enctype="multipart/form-data">
            <input type="hidden" name="token" value={who.token} />
            <div class="field wide">
              <label for="import">Bring a file in</label>
              <input type="file" id="import" name="file" accept="application/json,.json" />
            </div>
            <button type="submit" class="quiet">
              Bring it in
            </button>
          </form>
        ) : null}
      </section>
    </Page>
  )
}

interface KeepProps {
  readonly packed: string
  readonly token: string
  readonly what: Kind
  readonly words: string
  readonly quiet?: boolean
}

function Keep({ packed, token, what, words, quiet = false }: KeepProps) {
  return (
    <form method="post" action="/kept">
      <input type="hidden" name="token" value={token} />
      <input type="hidden" name="b" value={packed} />
      <input type="hidden" name="what" value={what} />
      <button type="submit" {...(quiet ? { class: 'quiet' } : {})}>
        {words}
      </button>
    </form>
  )
}

/** One kind at a time, or all. */
function Kinds({ kind, packed }: Pick<KeptPageProps, 'kind' | 'packed'>) {
  const address = (one: Kind | null) => {
    const asked = new URLSearchParams({ ...(one ? { kind: one } : {}), ...(packed ? { b: packed } : {}) })
    return `/kept${asked.size > 0 ? `?${asked}` : ''}`
  }
  return (
    <nav aria-label="Kinds" class="kinds">
      {[null, ...KINDS].map((one) => (
        <a href={address(one)} {...(one === kind ? { 'aria-current': 'true' as const } : {})}>
          {one ? KIND_WORDS[one].many : 'All'}
        </a>
      ))}
    </nav>
  )
}
