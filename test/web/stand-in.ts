import type { Advise } from '../../src/web/advisor.ts'
import { createApp } from '../../src/web/app.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { advice, brief } from '../views/fixture.ts'

/**
 * An app whose advice is the hand-written one: what is tested is the door, not the advice. Its changes belong to its
 * own brief, so that they are left off for any other.
 */
export const app = createApp(async (asked) =>
  asked.title === brief.title ? advice : { ...advice, changes: [] },
)
export const appWith = (advise: Advise) => createApp(advise)
export const packed = packBrief(brief)

export const text = (html: string) => html.replace(/<[^>]+>/g, ' ').replace(/\s+/g, ' ')

export const formOf = (answers: Readonly<Record<string, string>>) => ({
  method: 'POST',
  headers: { 'content-type': 'application/x-www-form-urlencoded' },
  body: new URLSearchParams(answers).toString(),
})
