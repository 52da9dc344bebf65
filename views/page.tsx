import { raw } from 'hono/html'
import type { Child } from 'hono/jsx'

export interface PageFrame {
  readonly title: string
  /** The brief in hand, packed for a link; null before there is one. */
  readonly packed: string | null
  readonly here: 'brief' | 'advice' | 'examples' | 'other'
  /** True for the version for paper: no navigation, every detail open. */
  readonly print?: boolean
}

/** Every page: head, skip link, navigation, main, and the caution that stands under all of them. */
export function Page({ title, packed, here, print = false, children }: PageFrame & { children?: Child }) {
  return (
    <>
      {raw('<!doctype html>')}
      <html lang="en">
        <head>
          <meta charset="utf-8" />
          <meta name="viewport" content="width=device-width, initial-scale=1" />
          <meta name="color-scheme" content="light dark" />
          <meta name="htmx-config" content='{"history":false}' />
          <title>{`${title} – gritwise`}</title>
          <link rel="icon" href="/assets/icon.svg" type="image/svg+xml" />
          <link rel="stylesheet" href="/assets/gritwise.css" />
          {print ? null : <script src="/assets/htmx.js" defer></script>}
        </head>
        <body class={print ? 'for-paper' : ''}>
          <a class="skip" href="#main">
            Skip to the content
          </a>
          {print ? null : <Masthead packed={packed} here={here} />}
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
