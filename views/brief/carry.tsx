/** The brief in and out as a file: a link to keep it, a box to bring one in. */
export function Carry({
  packed,
  typed,
  wrong,
}: {
  packed: string | null
  typed: string
  wrong: string | null
}) {
  return (
    <section class="carry" aria-labelledby="carry">
      <h2 id="carry">The brief as a file</h2>
      {packed ? (
        <p>
          <a href={`/brief.json?b=${packed}`} download>
            Download this brief (JSON)
          </a>
        </p>
      ) : null}
      <details {...(wrong || typed ? { open: true } : {})}>
        <summary>Bring in a brief</summary>
        <form method="post" action="/brief/import" enctype="multipart/form-data">
          <div class={`field wide${wrong ? ' wrong' : ''}`}>
            <label for="brief-json">Brief as JSON</label>
            <p class="hint" id="hint-brief-json">
              Paste it here, or choose a file below.
            </p>
            {wrong ? (
              <p class="error" id="error-brief-json">
                <span class="unseen">Error: </span>
                {wrong}
              </p>
            ) : null}
            <textarea
              id="brief-json"
              name="json"
              rows={6}
              spellcheck={false}
              aria-describedby={`hint-brief-json${wrong ? ' error-brief-json' : ''}`}
              {...(wrong ? { 'aria-invalid': 'true' as const } : {})}
            >
              {typed}
            </textarea>
          </div>
          <div class="field wide">
            <label for="brief-file">Brief file</label>
            <input type="file" id="brief-file" name="file" accept="application/json,.json" />
          </div>
          <button type="submit" class="quiet">
            Bring it into the form
          </button>
        </form>
      </details>
    </section>
  )
}
