import type { Done } from '../../src/store/people/trail.ts'
import { moment } from '../kept/kept-page.tsx'
import { Page } from '../page.tsx'
import { SignedIn, type SignedInAs } from './signed-in.tsx'

export interface TrailPageProps {
  readonly who: SignedInAs
  readonly done: readonly Done[]
}

/** Who changed what, the latest first. */
export function TrailPage({ who, done }: TrailPageProps) {
  return (
    <Page title="Who changed what" packed={null} here="kept">
      <h1>Who changed what</h1>
      <SignedIn {...who} />
      <p>
        <a href="/kept">All that is kept</a>
      </p>
      {done.length === 0 ? <p>Nothing yet.</p> : null}
      <section class="scroll" aria-label="Who changed what" tabindex={0}>
        <table class="kept-table">
          <thead>
            <tr>
              <th scope="col">Time (UTC)</th>
              <th scope="col">Who</th>
              <th scope="col">What</th>
            </tr>
          </thead>
          <tbody>
            {done.map(({ at, who: name, what, thing }) => (
              <tr>
                <td>{moment(at)}</td>
                <td>{name || 'this machine'}</td>
                <td class="what">
                  {what}
                  {thing ? (
                    <>
                      : <a href={`/kept/${thing.id}`}>{thing.title}</a>, revision {thing.revision}
                    </>
                  ) : null}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </Page>
  )
}
