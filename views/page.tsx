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
    | 'lines'
    | 'kept'
    | 'sign-in'
    | 'rules'
    | 'examples'
    | 'other'
  /** True for the version for paper: no navigation, every detail open. */
  readonly print?: boolean
  /** Seconds after which the page asks again by itself, while something is being worked out. */
  readonly again?: number
  /** True for a screen shown to a room: large type, no navigation but the page's own. */
  readonly present?: boolean
  /** True for a paper that tells what was run and not what is predicted. */
  readonly ran?: boolean
  /** True where a part of the page follows a control, in front of a room too. */
  readonly live?: boolean
}

/** Pages whose parts put the present choice into the address, so that a bookmark keeps it. */
const addressMoves = (here: PageFrame['here']) => here === 'trade-offs' || here === 'metal-detector'

/** Every page: head, skip link, navigation, main, and the caution that stands under all of them. */
export function Page(frame: PageFrame & { children?: Child }) {
  const {
    title,
    packed,
    here,
    print = false,
    present = false,
    live = false,
    ran = false,
    again = 0,
    children,
  } = frame
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
          {again > 0 ? <meta http-equiv="refresh" content={String(again)} /> : null}
          <title>{`${title} – gritwise`}</title>
          <link rel="icon" href="/assets/icon.svg" type="image/svg+xml" />
          <link rel="stylesheet" href="/assets/gritwise.css" />
          {here === 'advice' || here === 'brief' ? (
            <link rel="stylesheet" href={`/assets/${here}.css`} />
          ) : null}
          {here === 'kept' || here === 'sign-in' ? <link rel="stylesheet" href="/assets/kept.css" /> : null}
          {here === 'exercises' ? <link rel="stylesheet" href="/assets/sittings.css" /> : null}
          {here === 'compare' ? <link rel="stylesheet" href="/assets/compare.css" /> : null}
          {present ? <link rel="stylesheet" href="/assets/room.css" /> : null}
          {here === 'card' || here === 'exercises' ? (
            <link rel="stylesheet" href="/assets/pictures.css" />
          ) : null}
          {here === 'runs' ? <link rel="stylesheet" href="/assets/runs.css" /> : null}
          {here === 'register' || here === 'checks' || here === 'report' ? (
            <link rel="stylesheet" href="/assets/records.css" />
          ) : null}
          {present ? <script src="/assets/room-keys.js" defer></script> : null}
          {live ? <script src="/assets/dial-ahead.js" defer></script> : null}
          {print || (present && !live) ? null : <script src="/assets/htmx.js" defer></script>}
        </head>
        <body class={print ? 'for-paper' : present ? 'for-the-room' : ''}>
          <a class="skip" href="#main">
            Skip to the content
          </a>
          {here === 'sign-in' ? (
            <header class="masthead">
              <span class="wordmark">gritwise</span>
            </header>
          ) : print || present ? null : (
            <Masthead packed={packed} here={here} />
          )}
          <main id="main" tabindex={-1}>
            {children}
          </main>
          <footer>
            <p>
              {ran
                ? 'What was shown is no approval'
                : 'A test on the real product decides. These pages are a prediction, not an approval'}
              , and no substitute for a competent person, the local authority or legal advice.
            </p>
            {print || present ? null : (
              <p>
                <a href="/glossary">Glossary: the words of these pages</a>
              </p>
            )}
          </footer>
        </body>
      </html>
    </>
  )
}

type Here = PageFrame['here']

/** The pages of the head, in their order; those that speak of a brief are shown once there is one. */
const NAVIGATION: readonly {
  here: Here
  words: string
  path: string
  needs: 'brief' | 'may-have-brief' | 'no-brief'
}[] = [
  { here: 'brief', words: 'Brief', path: '/brief', needs: 'may-have-brief' },
  { here: 'advice', words: 'Advice', path: '/advice', needs: 'brief' },
  { here: 'card', words: 'X-ray pictures', path: '/card', needs: 'brief' },
  { here: 'trade-offs', words: 'Trade-offs', path: '/trade-offs', needs: 'brief' },
  { here: 'compare', words: 'Compare quotes', path: '/compare', needs: 'brief' },
  { here: 'register', words: 'Register', path: '/register', needs: 'brief' },
  { here: 'checks', words: 'Check plan', path: '/checks', needs: 'brief' },
  { here: 'runs', words: 'Test runs', path: '/runs', needs: 'may-have-brief' },
  { here: 'lines', words: 'Lines', path: '/lines', needs: 'no-brief' },
  { here: 'kept', words: 'Kept', path: '/kept', needs: 'may-have-brief' },
  { here: 'exercises', words: 'Exercises', path: '/exercises', needs: 'may-have-brief' },
  { here: 'rules', words: 'Rule book', path: '/rules', needs: 'may-have-brief' },
  { here: 'examples', words: 'Examples', path: '/examples', needs: 'no-brief' },
]

/** On a narrow screen these stand behind "More", so that the head takes two lines. */
const SELDOM: readonly Here[] = ['card', 'trade-offs', 'kept', 'exercises', 'rules', 'examples']
/** One of them that is open takes the place of the widest of the others. */
const isSeldom = (page: Here, here: Here) =>
  page !== here && (SELDOM.includes(page) || (page === 'compare' && SELDOM.includes(here)))
/** So many fit into two lines. */
const FEW_PAGES = 5

function PageLink({
  page,
  packed,
  here,
}: {
  page: (typeof NAVIGATION)[number]
  packed: string | null
  here: Here
}) {
  return (
    <a
      href={packed ? `${page.path}?b=${packed}` : page.path}
      {...(page.here === here ? { 'aria-current': 'page' as const } : {})}
    >
      {page.words}
    </a>
  )
}

function Masthead({ packed, here }: { packed: string | null; here: Here }) {
  const pages = NAVIGATION.filter(({ needs }) => needs !== (packed ? 'no-brief' : 'brief'))
  return (
    <header class="masthead">
      <a class="wordmark" href="/">
        gritwise
      </a>
      <nav aria-label="Pages">
        <ul>
          {pages.map((page) => (
            <li {...(isSeldom(page.here, here) ? { class: 'seldom' } : {})}>
              <PageLink page={page} packed={packed} here={here} />
            </li>
          ))}
        </ul>
        {pages.length > FEW_PAGES ? (
          <details class="more-pages">
            <summary>More</summary>
            <ul>
              {pages
                .filter((page) => isSeldom(page.here, here))
                .map((page) => (
                  <li>
                    <PageLink page={page} packed={packed} here={here} />
                  </li>
                ))}
            </ul>
          </details>
        ) : null}
      </nav>
    </header>
  )
}
