import { briefSchema } from '../../contract/brief.ts'
import { type Field, type Fields, fieldsOf } from './field-of.ts'
import { QUOTED_ROWS } from './quoted-fields.ts'

export type { Field, Fields }

export const BRIEF_FIELDS: Fields = fieldsOf(briefSchema.shape)

/** The brief's own fields, and the rows in which a quoted machine is typed in (they end up in `equipment`). */
const FORM_FIELDS: Fields = { ...BRIEF_FIELDS, quoted: QUOTED_ROWS }

/** The field at a dotted path such as "points.0.heightMm"; undefined where the form has none. */
export function fieldAt(path: string): Field | undefined {
  let fields: Fields | undefined = FORM_FIELDS
  let field: Field | undefined
  for (const key of path.split('.')) {
    if (/^\d+$/.test(key) && field?.kind === 'rows') continue
    field = fields?.[key]
    fields = field?.kind === 'group' || field?.kind === 'rows' ? field.fields : undefined
  }
  return field
}
