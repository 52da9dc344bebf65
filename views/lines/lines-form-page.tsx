import { Page } from '../page.tsx'
import type { LinesFormProps } from './props.ts'

const SAMPLE = `title;line;food;heightMm;widthMm;lengthMm;speedMPerMin;equipment;contaminants.0.material;contaminants.0.mustFindMm
Hazelnut kernels, 500 g;1;hazelnut;30;160;180;40;xray-single coil-single;quartz;3
Cheddar, block;1;cheddar;80;100;200;20;xray-single coil-single;quartz;3`

/** A table of products in: pasted or as a file. */
export function LinesFormPage({ packed, title, typed, problems }: LinesFormProps) {
  const wrong = problems.length > 0
  return (
    <Page title={`${wrong ? 'Error: ' : ''}Lines`} packed={packed} here="lines">
      {wrong ? (
        <div class="summary-of-errors" role="alert" tabindex={-1}>
          <h2>There is a problem</h2>
          <ul>
            {problems.map(({ path, message }) => (
              <li>
                <a href="#table">{path ? `${path}: ${message}` : message}</a>
              </li>
            ))}
          </ul>
        </div>
      ) : null}
      <h1>Lines</h1>
      <p class="standfirst">
        Many products through the same machines: the settings of each, the worst product of every line, and
        the build that takes all.
        {title ? ` What a row leaves out is taken from the brief “${title}”.` : ''}
      </p>
      <form method="post" action="/lines" enctype="multipart/form-data" class="sheet">
        {packed ? <input type="hidden" name="b" value={packed} /> : null}
        <fieldset class="group">
          <legend>
            <h2>The products</h2>
          </legend>
          <div class={`field wide${wrong ? ' wrong' : ''}`}>
            <label for="table">Table of products</label>
            <p class="hint" id="hint-table">
              One row a product. The first line names the columns by the keys of a brief; comma, semicolon or
              tab, decimal comma or point. Another unit goes behind the key, in brackets: [cm]. Columns of
              your own begin with #.
            </p>
            <textarea id="table" name="table" rows={10} spellcheck={false} aria-describedby="hint-table">
              {typed === '' ? SAMPLE : typed}
            </textarea>
          </div>
          <div class="field wide">
            <label for="file">Or a file</label>
            <input type="file" id="file" name="file" accept="text/csv,.csv,.tsv,.txt" />
          </div>
        </fieldset>
        <button type="submit">Work the products out</button>
      </form>
    </Page>
  )
}
