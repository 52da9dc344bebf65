import type { Sheet } from './sheet.ts'

/** Adds an empty row to a list of the brief. */
export function AddRow({ list, words }: { list: string; words: string }) {
  return (
    <button
      type="submit"
      class="quiet"
      name="action"
      value={`add:${list}`}
      formaction={`/advice#${list}`}
      formnovalidate
    >
      {words}
    </button>
  )
}

/** Takes one row out, and marks in the form that the row exists though it may be empty. */
export function RowEnd({ row, words, short = false }: { row: string; words: string; short?: boolean }) {
  const list = row.replace(/\.\d+$/, '')
  return (
    <>
      <input type="hidden" name={row} value="row" />
      <button
        type="submit"
        class="quiet"
        name="action"
        value={`remove:${row}`}
        formaction={`/advice#${list}`}
        formnovalidate
      >
        {short ? (
          <>
            Remove<span class="unseen">: {words}</span>
          </>
        ) : (
          words
        )}
      </button>
    </>
  )
}

/** What is wrong with a list as a whole, e.g. that it is empty. */
export function ListError({ sheet, list }: { sheet: Sheet; list: string }) {
  const message = sheet.problems.get(list)
  return message ? (
    <p class="error" id={`error-${list}`}>
      <span class="unseen">Error: </span>
      {message}
    </p>
  ) : null
}
