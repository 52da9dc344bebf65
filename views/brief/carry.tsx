import { GroupFold } from './fold.tsx'
import type { Sheet } from './sheet.ts'

/** The brief in and out as a file; part of the form, so that nothing typed is lost when a file cannot be read. */
export function Carry({
  sheet,
  packed,
  typed,
  wrong,
}: {
  sheet: Sheet
  packed: string | null
  typed: string
  wrong: string | null
}) {
  return (
    <GroupFold
      sheet={sheet}
      paths={['brief-json']}
      id="carry"
      title="Load or keep a brief"
      empty="as a file (JSON)"
      holds=""
    >
      {packed ? (
        <p>
          <a href={`/brief.json?b=${packed}`} download>
            Download this brief (JSON)
          </a>
        </p>
      ) : null}
      <div class={`field wide${wrong ? ' wrong' : ''}`}>
        <label for="brief-json">Brief as JSON</label>
        {wrong ? (
          <p class="error" id="error-brief-json">
            <span class="unseen">Error: </span>
            {wrong}
          </p>
        ) : null}
        <textarea
          id="brief-json"
          name="brief-json"
          rows={4}
          spellcheck={false}
          {...(wrong ? { 'aria-invalid': 'true' as const, 'aria-describedby': 'error-brief-json' } : {})}
        >
          {typed}
        </textarea>
      </div>
      <div class="field wide">
        <label for="brief-file">or a file</label>
        <input type="file" id="brief-file" name="brief-file" accept="application/json,.json" />
      </div>
      <button
        type="submit"
        class="quiet"
        formaction="/brief/import"
        formenctype="multipart/form-data"
        formnovalidate
      >
        Load a brief
      </button>
    </GroupFold>
  )
}
