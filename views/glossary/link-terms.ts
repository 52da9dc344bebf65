import { TERMS } from './terms.ts'

/** Within these a word is a name or a control, and stays as it is. */
const LEFT_ALONE =
  /^(?:a|button|label|legend|summary|h[1-6]|svg|code|pre|caption|th|textarea|select|title|dfn|nav|form)$/
const VOID = /^(?:input|br|hr|img|meta|link|col|wbr)$/

const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
const FORMS = new Map(
  TERMS.filter(({ everyday }) => !everyday).flatMap(({ id, term, also = [] }) =>
    [term, ...also].map((form) => [form, id] as const),
  ),
)
const ANY = new RegExp(
  `(?<![\\w-])(?:${[...FORMS.keys()]
    .sort((a, b) => b.length - a.length)
    .map(escaped)
    .join('|')})(?![\\w-])`,
  'gi',
)

/** On paper and in front of a room there is nothing to follow. */
const NOTHING_TO_FOLLOW = /<body class="for-(?:paper|the-room)"/

/**
 * A page with the first use of each word of the glossary in its running text linked to what it means. Words in links,
 * headings, controls, tables' heads and drawings are left alone.
 */
export function linkTerms(html: string): string {
  const start = html.indexOf('<main')
  const end = html.indexOf('</main>')
  if (start < 0 || end < 0 || NOTHING_TO_FOLLOW.test(html)) return html
  const met = new Set<string>()
  let closed: string | null = null
  let depth = 0
  const body = html
    .slice(start, end)
    .replace(/<(\/?)([a-z0-9]+)[^>]*?(\/?)>|[^<]+/g, (part, slash, name, self) => {
      if (name !== undefined) {
        if (closed === null) {
          if (!slash && !self && !VOID.test(name) && LEFT_ALONE.test(name)) {
            closed = name
            depth = 1
          }
        } else if (name === closed && !self) {
          depth += slash ? -1 : 1
          if (depth === 0) closed = null
        }
        return part
      }
      if (closed !== null) return part
      return part.replace(ANY, (word: string) => {
        const id = FORMS.get(word.toLowerCase())
        if (id === undefined || met.has(id)) return word
        met.add(id)
        return `<a class="term" href="/glossary#${id}">${word}</a>`
      })
    })
  return html.slice(0, start) + body + html.slice(end)
}
