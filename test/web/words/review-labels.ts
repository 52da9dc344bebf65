/**
 * Writes the labels of all pages anew (npm run labels): what was reviewed keeps its origin, what is new has
 * none yet and fails the test until a person says whose word it is, what is gone is left out.
 */
import { writeFileSync } from 'node:fs'
import { createApp } from '../../../src/web/app.ts'
import { crawl } from './crawl.ts'
import { labelFile, labelsOn, reviewedLabels } from './labels.ts'

const pages = await crawl(createApp())
const reviewed = reviewedLabels()
const shown = [...new Set(pages.flatMap(({ html }) => [...labelsOn(html)]))].sort((a, b) => (a < b ? -1 : 1))
const next = Object.fromEntries(shown.map((label) => [label, reviewed[label] ?? '']))
writeFileSync(labelFile, `${JSON.stringify(next, null, 1)}\n`)
const fresh = shown.filter((label) => !next[label])
const gone = Object.keys(reviewed).filter((label) => !(label in next))
console.log(`${pages.length} pages, ${shown.length} labels, ${fresh.length} to review, ${gone.length} gone`)
for (const label of fresh) console.log(`  review: ${label}`)
