import type { KeptThing } from '../../src/store/kept.ts'
import { Page } from '../page.tsx'
import { SignedIn, type SignedInAs } from '../people/signed-in.tsx'

export interface KeptPageProps {
  readonly who: SignedInAs
  /** Authors and administrators. */
  readonly mayKeep: boolean
  readonly packed: string | null
  /** Of the brief in hand. */
  readonly title: string | null
  readonly things: readonly KeptThing[]
  /** The last one shown, where more follow. */
  readonly next: string | null
  /** "added-changed-same" after a file was brought in. */
  readonly imported: string | null
}

/** "2026-11-27 19:05" of a time as it is kept; UTC. */
export const moment = (at: string) => at.slice(0, 16).replace('T', ' ')

/** What is kept, and the brief in hand to be kept. */
export function KeptPage({ who, mayKeep, packed, title, things, next, imported }: KeptPageProps) {
  const [added, changed, same] = /^\d+-\d+-\d+$/.test(imported ?? '') ? imported!.split('-') : []
  return (
    <Page title="Kept briefs" packed={packed} here="kept">
      <h1>Kept briefs</h1>
      <SignedIn {...who} />
      <p class="standfirst">
        With every revision. Nothing has to be kept: a brief also travels in the address of its pages.
      </p>
      {added === undefined ? null : (
        <p role="status">
          Brought in: {added} new, {changed} with a new revision, {same} the same as here.
        </p>
      )}
      {packed && mayKeep ? (
        <form method="post" action="/kept">
          <input type="hidden" name="token" value={who.token} />
          <input type="hidden" name="b" value={packed} />
          <button type="submit">Keep “{title}” as a new brief</button>
        </form>
      ) : null}
      {things.length === 0 ? (
        <p>Nothing is kept yet.</p>
      ) : (
        <section class="scroll" aria-label="Kept briefs" tabindex={0}>
          <table class="kept-table">
            <thead>
              <tr>
                <th scope="col">Brief</th>
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
          <a href={`/kept?after=${next}`}>Earlier ones</a>
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
