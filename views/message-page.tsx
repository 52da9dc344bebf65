import { Page } from './page.tsx'

interface Message {
  readonly title: string
  readonly text: string
}

/** A page that only says what went wrong and where to go from there. */
export function MessagePage({ title, text }: Message) {
  return (
    <Page title={title} packed={null} here="other">
      <h1>{title}</h1>
      <MessageText text={text} />
    </Page>
  )
}

function MessageText({ text }: { text: string }) {
  return (
    <>
      <p>{text}</p>
      <p>
        <a href="/">Go to the brief</a>
      </p>
    </>
  )
}

/** The same inside a part of a page. */
export function MessagePart({ title, text }: Message) {
  return (
    <div class="note" role="alert">
      <p>
        <strong>{title}.</strong> {text}
      </p>
    </div>
  )
}
