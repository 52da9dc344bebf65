import type { FieldNote } from './sheet.ts'

interface Props {
  readonly path: string
  readonly note: FieldNote | undefined
  /** True in an answer to a part of the page: the line takes the place of the one with its id. */
  readonly swap?: boolean
}

/** The line under a field: "understood as 30 mm", or "assumed: 13 mm …"; empty when there is nothing to say. */
export function NoteLine({ path, note, swap = false }: Props) {
  const text = note?.understood
    ? `understood as ${note.understood}`
    : note?.assumed
      ? `assumed: ${note.assumed}`
      : note?.taken
        ? `as usual for the kind: ${note.taken}`
        : ''
  return (
    <p class="made-of" id={`note-${path}`} {...(swap ? { 'hx-swap-oob': 'true' } : {})}>
      {text}
    </p>
  )
}
