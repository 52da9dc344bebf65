interface Props {
  readonly id: string
  readonly href: string
  readonly words: string
  /** What is inside, in a line. */
  readonly inside: string
}

/** A link that htmx opens in its place; without script it leads to a page of its own. */
export const Opens = ({ id, href, words, inside }: Props) => (
  <div class="opens" id={id}>
    <a href={href} hx-get={href} hx-target={`#${id}`} hx-swap="innerHTML">
      {words}
    </a>{' '}
    <span class="small">{inside}</span>
  </div>
)
