export interface DemoLink {
  readonly id: string
  readonly title: string
  readonly shows: string
  readonly packed: string
}

/** Briefs to start from: straight to the advice, or into the form. */
export function DemoList({ demos }: { demos: readonly DemoLink[] }) {
  return (
    <ul class="demos">
      {demos.map(({ title, shows, packed, id }) => (
        <li id={`demo-${id}`}>
          <a class="demo-title" href={`/advice?b=${packed}`}>
            {title}
          </a>
          <p>{shows}</p>
          <a class="second" href={`/brief?b=${packed}`}>
            Open in the form<span class="unseen">: {title}</span>
          </a>
        </li>
      ))}
    </ul>
  )
}
