import { linkTerms } from '../../../views/glossary/link-terms.ts'
import type { Answers } from './door.ts'

/** The glossary explains its words itself; on the brief each link would be one more stop between two fields. */
const LEFT_AS_THEY_ARE: ReadonlySet<string> = new Set(['/glossary', '/brief', '/'])

/** Pages with the first use of each word of the glossary linked to what it means; parts, files and paper stay as they are. */
export const termsLinked =
  (answers: Answers): Answers =>
  async (request) => {
    const response = await answers(request)
    const isPage = (response.headers.get('content-type') ?? '').startsWith('text/html')
    if (!isPage || response.status !== 200 || LEFT_AS_THEY_ARE.has(new URL(request.url).pathname))
      return response
    // Byte by byte: the words are ASCII, and what stands around them is handed on untouched.
    const page = Buffer.from(await response.arrayBuffer()).toString('latin1')
    const headers = new Headers(response.headers)
    headers.delete('content-length')
    return new Response(Buffer.from(linkTerms(page), 'latin1'), { status: response.status, headers })
  }
