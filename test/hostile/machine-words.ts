/** Words of the machine inside: in a sentence to a person they mean that something was not thought of. */
export const MACHINE_WORDS =
  /\bundefined\b|\[object |\bNaN\b|\bInfinity\b|\b[A-Z]\w+Error: |Cannot read|is not a function|is not iterable|node_modules|\.tsx?:\d|\bat [\w.]+ \((?:file|node|\/)|Invalid input|Invalid typed|Too (?:big|small):|call stack|\bheap\b/

/** Text of a page as a person reads it. */
export const readable = (html: string): string =>
  html
    .replace(/<(title|script|style|textarea)\b.*?<\/\1>/gs, ' ')
    .replace(/<[^>]+>/g, ' ')
    .replace(/\s+/g, ' ')
