interface Props {
  readonly previous: string | null
  readonly next:
    | { readonly href: string; readonly words: string }
    /** Sends the form of the page instead: hands that were counted go with it. */
    | { readonly form: string; readonly words: string }
    | null
  readonly list: string
}

/** Back and on through the screens of a room; the way on has the focus, so that Enter leads through. */
export function RoomNav({ previous, next, list }: Props) {
  return (
    <nav class="room-nav" aria-label="Screens">
      <ul>
        <li>
          {previous === null ? null : (
            <a href={previous} rel="prev">
              Back
            </a>
          )}
        </li>
        <li>
          <a href={list}>All exercises</a>
        </li>
        <li>
          {next === null ? null : 'form' in next ? (
            <button type="submit" class="onward" form={next.form} autofocus>
              {next.words}
            </button>
          ) : (
            <a href={next.href} rel="next" autofocus>
              {next.words}
            </a>
          )}
        </li>
      </ul>
    </nav>
  )
}
