import type { Sheet } from './sheet.ts'

/** Adds an empty row to a list of the brief. */
export function AddRow({ list, words }: { list: string; words: string }) {
  return (
    <button type="submit" class="quiet" name="action" value={`add:${list}`} formnovalidate>
      {words}
    </button>
  )
}

/** Takes one row out, and marks in the form that the row exists though it may be empty. */
export function RowEnd({ row, words }: { row: string; words: string }) {
  return (
    <>
      <input type="hidden" name={row} value="row" />
      <button type="submit" class="quiet" name="action" value={`remove:${row}`} formnovalidate>
        {words}
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
