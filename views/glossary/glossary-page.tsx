import { Page } from '../page.tsx'
import { TERMS } from './terms.ts'

/** Every word of these pages in two sentences each. */
export function GlossaryPage({ print }: { print: boolean }) {
  return (
    <Page title="Glossary" packed={null} here="other" print={print}>
      <h1>Glossary</h1>
      <p class="standfirst">The words of these pages, two sentences each.</p>
      {print ? null : (
        <ul class="acts">
          <li>
            <a href="/glossary?print=1">Print</a>
          </li>
        </ul>
      )}
      <div class="glossary">
        {[...TERMS]
          .sort((a, b) => a.term.localeCompare(b.term))
          .map(({ id, term, also, means }) => (
            <p id={id}>
              <dfn>{term}</dfn>
              {also ? `, also ${also.join(', ')}` : ''}: {means}
            </p>
          ))}
      </div>
    </Page>
  )
}
