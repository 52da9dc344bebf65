import { rowsOf } from '../../src/brief/form/form-index.ts'
import { Choose, Measure } from '../brief/field.tsx'
import { CostBox } from './cost-box.tsx'
import type { ComparePageProps } from './props.ts'

const SIZES = ['heightMm', 'widthMm', 'lengthMm', 'massG', 'speedMPerMin', 'packsPerMin'] as const
/** Empty rows of packaging beside those of the brief. */
const FREE_PARTS = 2

/** Lays another pack beside this one: change what differs, or give the address of another brief. */
export function OtherPackForm(props: ComparePageProps) {
  const { comparison, otherPack, query } = props
  const { sheet, problems } = otherPack
  const at = comparison.sides[0]?.pointIndex ?? 0
  const list = `points.${at}.parts`
  const rows = rowsOf(sheet.answers, list)
  const free = Array.from({ length: FREE_PARTS }, (_, more) => (rows.at(-1) ?? -1) + 1 + more)
  const carried = [...new URLSearchParams(query)].filter(([name]) =>
    ['b', 'x', 'rejects', 'with'].includes(name),
  )
  const hidden = (names: readonly string[]) =>
    carried
      .filter(([name]) => names.includes(name))
      .map(([name, value]) => <input type="hidden" name={name} value={value} />)
  const point = comparison.sides[0]?.point.name
  return (
    <details class="other-pack" open={problems.length > 0}>
      <summary>
        {comparison.laid.length === 2
          ? 'Change pack B, or take another brief'
          : 'Pack against pack: plain or metallised film, jar or pouch, 45 or 30 mm'}
      </summary>
      <form method="get" action="/compare">
        {hidden(['b', 'x', 'rejects', 'with'])}
        <fieldset class="sub">
          <legend>Pack B{comparison.laid[0]!.brief.points.length > 1 ? ` at ${point}` : ''}</legend>
          <p class="hint">Change what differs and leave the rest.</p>
          <div class="fields">
            {SIZES.map((field) => (
              <Measure sheet={sheet} path={`points.${at}.${field}`} />
            ))}
            <Choose sheet={sheet} path={`points.${at}.outline`} empty="Not stated" />
          </div>
          {[...rows, ...free].map((row) => (
            <div class="fields tight">
              <Choose
                sheet={sheet}
                path={`${list}.${row}.material`}
                groups={sheet.packaging}
                empty="No packaging part"
              />
              <Measure sheet={sheet} path={`${list}.${row}.mm`} />
              <Choose sheet={sheet} path={`${list}.${row}.place`} empty="Choose a place" />
              <Measure sheet={sheet} path={`${list}.${row}.sheetOhmPerSquare`} />
            </div>
          ))}
        </fieldset>
        <button type="submit">Lay pack B beside it</button>
      </form>
      <form method="get" action="/compare" id="other-brief">
        {hidden(['b', 'x', 'rejects'])}
        <CostBox
          path="with"
          form="other-brief"
          label="Or the address of another brief"
          hint="Of any page about it, pasted whole."
          unit=""
          typed={problems.some(({ path }) => path === 'with') ? otherPack.pasted : ''}
          wrong={problems.find(({ path }) => path === 'with')?.message}
        />
        <button type="submit" class="quiet">
          Compare with that brief
        </button>
      </form>
    </details>
  )
}
