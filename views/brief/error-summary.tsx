import type { Problem } from '../../src/contract/brief.ts'

/** What is wrong, at the top of the page, each line leading to its field. */
export function ErrorSummary({ problems }: { problems: readonly Problem[] }) {
  return (
    <section class="summary-of-errors" role="alert" tabindex={-1} autofocus aria-labelledby="errors">
      <h2 id="errors">There is a problem</h2>
      <ul>
        {problems.map(({ path, message }) => (
          <li>{path === '' ? message : <a href={`#${path}`}>{message}</a>}</li>
        ))}
      </ul>
    </section>
  )
}
