import type { RunsPageProps } from './props.ts'

/** The table in: pasted or as a file, with the clause that was agreed, if one was. */
export function RunsForm({ packed, typed, problems }: Pick<RunsPageProps, 'packed' | 'typed' | 'problems'>) {
  const clause = (name: keyof typeof typed, label: string, unit: string) => (
    <div class="field">
      <label for={name}>{label}</label>
      <span class="measure">
        <input type="text" inputmode="decimal" autocomplete="off" id={name} name={name} value={typed[name]} />
        <span class="unit">{unit}</span>
      </span>
    </div>
  )
  const wrong = problems.length > 0
  return (
    <form method="post" action="/runs" enctype="multipart/form-data" class="sheet">
      {packed ? <input type="hidden" name="b" value={packed} /> : null}
      {typed.machine ? <input type="hidden" name="machine" value={typed.machine} /> : null}
      <fieldset class="group">
        <legend>
          <h2>The runs</h2>
        </legend>
        <div class={`field wide${wrong ? ' wrong' : ''}`}>
          <label for="table">Table of runs</label>
          <p class="hint" id="hint-table">
            One line a piece: equipment, piece, pack, setting, material, shape, sizeMm, position, runs, found,
            date and what else you have; comma, semicolon or tab, columns in any order. Lines without a
            material are clean packs. Several runs of one piece in one pack count once.
          </p>
          <textarea id="table" name="table" rows={8} spellcheck={false} aria-describedby="hint-table">
            {typed.table}
          </textarea>
        </div>
        <div class="field wide">
          <label for="file">Or a file</label>
          <input type="file" id="file" name="file" accept="text/csv,.csv,.tsv,.txt" />
        </div>
        <details {...(typed.clauseSize ? { open: true } : {})}>
          <summary>A clause that was agreed</summary>
          <div class="fields">
            {clause('clauseSize', 'Size', 'mm')}
            {clause('clausePieces', 'Pieces', '')}
            {clause('clauseMisses', 'At most missed', '')}
            {clause('clauseClean', 'Clean packs', '')}
            {clause('clauseRejects', 'At most rejected', '')}
          </div>
        </details>
      </fieldset>
      <button type="submit">Read the runs</button>
    </form>
  )
}
