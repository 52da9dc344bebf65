import { raw } from 'hono/html'
import type { Child } from 'hono/jsx'

export interface PageFrame {
  readonly title: string
  /** The brief in hand, packed for a link; null before there is one. */
  readonly packed: string | null
  readonly here:
    | 'brief'
    | 'advice'
    | 'card'
    | 'trade-offs'
    | 'metal-detector'
    | 'compare'
    | 'register'
    | 'checks'
    | 'report'
    | 'exercises'
    | 'runs'
    | 'rules'
    | 'examples'
    | 'other'
  /** True for the version for paper: no navigation, every detail open. */
  readonly print?: boolean
  /** True for a screen shown to a room: large type, no navigation but the page's own. */
  readonly present?: boolean
}

/** Pages whose parts put the present choice into the address, so that a bookmark keeps it. */
const addressMoves = (here: PageFrame['here']) => here === 'trade-offs' || here === 'metal-detector'

/** Every page: head, skip link, navigation, main, and the caution that stands under all of them. */
export function Page(frame: PageFrame & { children?: Child }) {
  const { title, packed, here, print = false, present = false, children } = frame
  return (
    <>
      {raw('<!doctype html>')}
      <html lang="en">
        <head>
          <meta charset="utf-8" />
          <meta name="viewport" content="width=device-width, initial-scale=1" />
          <meta name="color-scheme" content="light dark" />
          <meta
            name="htmx-config"
            content={addressMoves(here) ? '{"history":"reload"}' : '{"history":false}'}
          />
          <title>{`${title} – gritwise`}</title>
          <link rel="icon" href="/assets/icon.svg" type="image/svg+xml" />
          <link rel="stylesheet" href="/assets/gritwise.css" />
          {here === 'exercises' || here === 'compare' ? (
            <link rel="stylesheet" href="/assets/sittings.css" />
          ) : null}
          {here === 'runs' ? <link rel="stylesheet" href="/assets/runs.css" /> : null}
          {here === 'register' || here === 'checks' || here === 'report' ? (
            <link rel="stylesheet" href="/assets/records.css" />
          ) : null}
          {print || present ? null : <script src="/assets/htmx.js" defer></script>}
        </head>
        <body class={print ? 'for-paper' : present ? 'for-the-room' : ''}>
          <a class="skip" href="#main">
            Skip to the content
          </a>
          {print || present ? null : <Masthead packed={packed} here={here} />}
          <main id="main" tabindex={-1}>
            {children}
          </main>
          <footer>
            <p>
              A test on the real product decides. These pages are a prediction, not an approval, and no
              substitute for a competent person or the local authority.
            </p>
          </footer>
        </body>
      </html>
    </>
  )
}

function Masthead({ packed, here }: { packed: string | null; here: PageFrame['here'] }) {
  const current = (page: PageFrame['here']) => (page === here ? { 'aria-current': 'page' as const } : {})
  return (
    <header class="masthead">
      <a class="wordmark" href="/">
        gritwise
      </a>
      <nav aria-label="Pages">
        <ul>
          <li>
            <a href={packed ? `/brief?b=${packed}` : '/'} {...current('brief')}>
              Brief
            </a>
          </li>
          {packed ? (
            <li>
              <a href={`/advice?b=${packed}`} {...current('advice')}>
                Advice
              </a>
            </li>
          ) : null}
          {packed ? (
            <li>
              <a href={`/card?b=${packed}`} {...current('card')}>
                Test card
              </a>
            </li>
          ) : null}
          {packed ? (
            <li>
              <a href={`/trade-offs?b=${packed}`} {...current('trade-offs')}>
                Trade-offs
              </a>
            </li>
          ) : null}
          {packed ? (
            <li>
              <a href={`/compare?b=${packed}`} {...current('compare')}>
                Compare quotes
              </a>
            </li>
          ) : null}
          {packed ? (
            <li>
              <a href={`/register?b=${packed}`} {...current('register')}>
                Register
              </a>
            </li>
          ) : null}
          {packed ? (
            <li>
              <a href={`/checks?b=${packed}`} {...current('checks')}>
                Check plan
              </a>
            </li>
          ) : null}
          <li>
            <a href={packed ? `/runs?b=${packed}` : '/runs'} {...current('runs')}>
              Test runs
            </a>
          </li>
          <li>
            <a href={packed ? `/exercises?b=${packed}` : '/exercises'} {...current('exercises')}>
              Exercises
            </a>
          </li>
          <li>
            <a href={packed ? `/rules?b=${packed}` : '/rules'} {...current('rules')}>
              Rule book
            </a>
          </li>
          <li>
            <a href="/examples" {...current('examples')}>
              Examples
            </a>
          </li>
        </ul>
      </nav>
    </header>
  )
}
