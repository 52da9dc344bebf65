import { type Field, fieldAt } from '../../brief/form/form-fields.ts'
import { nearestWord } from '../../brief/nearest.ts'
import { type Problem, pointSchema, productSchema } from '../../contract/index.ts'
import { quoted } from '../../contract/quoted.ts'

/** A column of a table: where its cells belong in the brief, and how they are read. */
export interface Column {
  /** As the heading says it. */
  readonly heading: string
  /** Path in the brief ("points.0.heightMm"), "equipment", or "#…" for what is carried along. */
  readonly path: string
  /** Unit the heading adds in brackets; empty for the field's own. */
  readonly unit: string
}

export type Heading =
  | { readonly ok: true; readonly columns: readonly Column[] }
  | { readonly ok: false; readonly problems: readonly Problem[] }

const MOST_COLUMNS = 500
const BRIEF = ['title', 'market', 'consumer', 'readyToEat', 'labelClaims', 'equipment']
/** A field of the product or of the first point may stand without its path; the product's goes first. */
const SHORT: ReadonlyMap<string, string> = new Map([
  ...Object.keys(pointSchema.shape).map((key) => [key, `points.0.${key}`] as const),
  ...Object.keys(productSchema.shape).map((key) => [key, `product.${key}`] as const),
])

const isOneCell = (field: Field | undefined) => field !== undefined && !['group', 'rows'].includes(field.kind)

/** The columns a heading names: keys of the brief with dots, short where that says enough, a unit in brackets on request. */
export function readHeading(cells: readonly string[]): Heading {
  const columns: Column[] = []
  const problems: Problem[] = []
  if (cells.length > MOST_COLUMNS)
    return wrong('heading', `at most ${MOST_COLUMNS} columns are read; ${cells.length} were given`)
  for (const [at, heading] of cells.entries()) {
    const read = heading === '' ? null : columnOf(heading)
    const place = `column ${at + 1}`
    if (read === null) columns.push({ heading, path: '', unit: '' })
    else if (typeof read === 'string') problems.push({ path: place, message: read })
    else if (columns.some(({ path }) => path === read.path))
      problems.push({ path: place, message: `${quoted(heading)} stands twice` })
    else columns.push(read)
  }
  if (problems.length > 0) return { ok: false, problems }
  if (columns.every(({ path }) => path === '' || path.startsWith('#')))
    return wrong(
      'heading',
      'the first line names the columns, with at least product.food and points.0.heightMm',
    )
  return { ok: true, columns }
}

const wrong = (path: string, message: string): Heading => ({ ok: false, problems: [{ path, message }] })

/** The column a heading stands for, or what is wrong with it. */
function columnOf(heading: string): Column | string {
  if (heading.startsWith('#')) return { heading, path: heading, unit: '' }
  const [, name = heading, unit = ''] = /^(.*?)\s*[[(]([^\])]*)[\])]$/.exec(heading) ?? []
  const path = pathOf(name)
  if (path === null) {
    const near = nearestWord(name, [...BRIEF, ...SHORT.keys(), ...SHORT.values()])
    return `unknown column ${quoted(heading)}${near ? `; do you mean ${near}?` : ''} Columns are keys of the brief, as product.food, points.0.heightMm, contaminants.0.material; begin the name of one of your own with #`
  }
  const field = fieldAt(path)
  if (unit !== '' && field?.kind !== 'measure') return `${quoted(heading)} takes no unit`
  return { heading, path, unit }
}

function pathOf(name: string): string | null {
  const dotted = name.replaceAll(/\[(\d+)\]/g, '.$1')
  const short = [...SHORT].find(([key]) => key.toLowerCase() === dotted.toLowerCase())?.[1]
  const path = dotted.includes('.') || BRIEF.includes(dotted) ? dotted : (short ?? dotted)
  return isOneCell(fieldAt(path)) && !isLeftOut(path) ? path : null
}

/** What a table has no place for: a list of groups has its number in the path. */
const isLeftOut = (path: string) => /\.(?:points|contaminants|parts)$/.test(path) || path.startsWith('quoted')
