import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { reportCommand } from '../../src/commands/report.ts'
import { createApp } from '../../src/web/app.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { run } from '../commands/run.ts'
import { FOUR_BRIEFS } from './four-briefs.ts'

const app = createApp()
const DAY = '28 November 2026'
const address = (door: string, name: string, more = '') =>
  `${door}?b=${packBrief(FOUR_BRIEFS[name]!)}&date=${encodeURIComponent(DAY)}${more}`
const again = (data: unknown) =>
  app.request('/api/report', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(data),
  })

const files = new Map<string, string>()
let folder = ''
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'four-reports-'))
  for (const name of Object.keys(FOUR_BRIEFS))
    files.set(name, await (await app.request(address('/report/file', name))).text())
})
afterAll(() => rmSync(folder, { recursive: true }))

const words = (html: string) =>
  html
    .replace(/<[^>]+>/g, ' ')
    .replace(/&amp;/g, '&')
    .replace(/\s+/g, ' ')
    .trim()
const section = (html: string, from: string, to: string) =>
  html.slice(html.indexOf(`id="${from}"`), html.indexOf(`id="${to}"`))

const bodyRows = (table: string) =>
  [...table.matchAll(/<tr\b[\s\S]*?<\/tr>/g)].map(([row]) => row).filter((row) => row.includes('<td'))
/** A number with a unit of what a report works out. */
const FIGURE = /\d ?(?:mm|%|min|ms|kg|packs|hours|per million|pieces)(?![a-z])/
/** What a person gave, or what is said to be assumed there and then. */
const GIVEN =
  /^(?:Chosen: .*entered in the brief|No time between checks is set|Assumed unless a person said otherwise)/
type Cell = (head: RegExp) => string
/** Columns of estimates, and how each shows how far it may be off. */
const RANGED: readonly (readonly [head: RegExp, isRanged: (cell: Cell) => boolean])[] = [
  [/^Expected, mm/, (cell) => /\d/.test(cell(/^Best possible/)) && /\d|none/.test(cell(/^Safe to promise/))],
  [/^Estimated to pass/, (cell) => / to \d|at most|no range/.test(cell(/^Estimated to pass/))],
  [/^After, (?:best|at most)/, (cell) => / to \d|a bound|–/.test(cell(/^After, 5 to 95/))],
  [/^Pieces a year/, (cell) => / to \d|at most|no range/.test(cell(/^Pieces a year/))],
  [
    /^Mean chance of finding/,
    (cell) => /^0 %|at the promised sizes|no size promised/.test(cell(/^Mean chance of finding/)),
  ],
  [/^Chance of one run/, (cell) => /by a logit/.test(cell(/^Chance of one run/))],
]

describe.each(Object.keys(FOUR_BRIEFS))('the report of %s', (name) => {
  const html = () => files.get(name)!

  it('says of every regulation for whom it holds, where it stands, and the day it was read', () => {
    const body = html().replace(/<ol class="report-sources">[\s\S]*?<\/ol>/, '')
    const said = [...body.matchAll(/<(p|li|dd|td)\b[^>]*>([\s\S]*?)<\/\1>/g)].map(([, , inner = '']) =>
      words(inner),
    )
    const regulation = /\b(?:CFR|U\.?S\.?C\b|Regulation \(|Directive|Article|DSEAR|CPG|Codex|ISO \d+)/
    const cited = said.filter((sentence) => regulation.test(sentence))
    expect(cited.length).toBeGreaterThan(5)
    for (const sentence of cited) {
      expect(sentence).toMatch(/27 November 2026/)
      expect(sentence).toMatch(/\b(?:EU|US|FDA|FSIS|CFR|UK|Great Britain|Northern Ireland|ISO|Codex)\b/)
      expect(sentence).toMatch(/\d+[./]\d+|Article|Annex|Sec\.|\b\d{3}\b/)
    }
  })

  it('shows no table of figures worked out without what they rest on', () => {
    const worked = section(html(), 'predicted', 'assumed')
    for (const [table] of worked.matchAll(/<table[\s\S]*?<\/table>/g)) {
      const cells = [...table.matchAll(/<td[^>]*>([\s\S]*?)<\/td>/g)].map(([, inner = '']) => words(inner))
      if (cells.some((cell) => /\d/.test(cell))) expect(table, words(table)).toContain('source-numbers')
    }
    expect(html()).not.toMatch(/rests on<\/caption>|rests on;/)
  })

  it('gives every figure it works out a source number', () => {
    const worked = section(html(), 'predicted', 'site-list')
    const sentences = [
      ...worked.replace(/<table[\s\S]*?<\/table>/g, '').matchAll(/<(p|li|dd)\b[\s\S]*?<\/\1>/g),
    ].map(([one]) => one)
    const withFigures = sentences.filter((one) => FIGURE.test(words(one)))
    expect(withFigures.length).toBeGreaterThan(8)
    for (const one of withFigures)
      if (!GIVEN.test(words(one))) expect(one, words(one)).toContain('source-numbers')
    let rows = 0
    for (const [table] of worked.matchAll(/<table[\s\S]*?<\/table>/g)) {
      const ofAll = /<caption>[\s\S]*?source-numbers[\s\S]*?<\/caption>/.test(table)
      for (const row of bodyRows(table)) {
        if (!/\d/.test(words(row))) continue
        rows++
        if (!ofAll) expect(row, words(row)).toContain('source-numbers')
      }
    }
    expect(rows).toBeGreaterThan(20)
  })

  it('gives every estimate a range, a bound, or the word that it has none', () => {
    let estimates = 0
    const all = [html().slice(0, html().indexOf('id="asked"')), section(html(), 'predicted', 'site-list')]
    for (const [table] of all.join('').matchAll(/<table[\s\S]*?<\/table>/g)) {
      const heads = [...(table.match(/<thead[\s\S]*?<\/thead>/)?.[0] ?? '').matchAll(/<th\b[\s\S]*?<\/th>/g)]
      const at = (head: RegExp) => heads.findIndex(([one]) => head.test(words(one)))
      for (const row of bodyRows(table)) {
        const cells = [...row.matchAll(/<t[hd]\b[\s\S]*?<\/t[hd]>/g)].map(([one]) => words(one))
        const cell = (head: RegExp) => (at(head) < 0 ? '' : (cells.at(at(head) - heads.length) ?? ''))
        for (const [head, range] of RANGED)
          if (/\d/.test(cell(head).replace(/\[[\d, ]+\]/g, ''))) {
            estimates++
            expect(range(cell), cells.join(' | ')).toBe(true)
          }
      }
    }
    expect(estimates).toBeGreaterThan(5)
    for (const [said] of words(html()).matchAll(/[\d.]+ pieces of concern a year arrive.{40}/g))
      expect(said).toMatch(/5 to 95 %|at most|without a range/)
  })

  it('is made again, byte for byte, from the JSON it keeps', async () => {
    const data = await (await app.request(address('/report/data.json', name))).json()
    expect(await (await again(data)).text()).toBe(html())
  })
})

describe('doors of the report', () => {
  it('makes the same bytes by page, API and command', async () => {
    const path = join(folder, 'kept.json')
    const kept = await (await app.request(address('/report/data.json', "infants' powder", '&short=1'))).text()
    writeFileSync(path, kept)
    await run(reportCommand, path, '--out', join(folder, 'made.html'))
    const short = await (await app.request(address('/report/file', "infants' powder", '&short=1'))).text()
    expect(readFileSync(join(folder, 'made.html'), 'utf8')).toBe(short)
    expect(await (await again(JSON.parse(kept))).text()).toBe(short)
  })

  it('refuses other versions, a day of more than 40 characters and a form it does not know, at every door', async () => {
    const data = (await (await app.request(address('/report/data.json', "infants' powder"))).json()) as {
      versions: object
    }
    const old = await again({ ...data, versions: { ...data.versions, rules: 'gritwise 0.0.1' } })
    expect(old.status).toBe(422)
    expect(await old.text()).toContain('rule book gritwise 0.0.1 then')
    const day = 'x'.repeat(41)
    const long = await again({ ...data, date: day })
    expect(long.status).toBe(422)
    expect(await long.text()).toContain('at most 40 characters')
    for (const door of ['/report', '/report/file', '/report/data.json']) {
      const b = packBrief(FOUR_BRIEFS["infants' powder"]!)
      expect((await app.request(`${door}?b=${b}&date=${day}`)).status, door).toBe(422)
      const maybe = await app.request(`${door}?b=${b}&short=maybe`)
      expect(maybe.status, door).toBe(422)
      expect(await maybe.text(), door).toContain('short must be 1')
    }
    const path = join(folder, 'brief.json')
    writeFileSync(path, JSON.stringify(FOUR_BRIEFS["infants' powder"]))
    const out = join(folder, 'none.html')
    await expect(run(reportCommand, path, '--out', out, '--date', day)).rejects.toThrow(/at most 40/)
    await expect(run(reportCommand, path, '--out', out, '--short=maybe')).rejects.toThrow(/--short/)
  })

  it('never writes the JSON over the brief it reads', async () => {
    const path = join(folder, 'brief.json')
    const before = readFileSync(path, 'utf8')
    await expect(run(reportCommand, path, '--out', join(folder, 'brief.html'), '--json')).rejects.toThrow(
      'the file that is read',
    )
    expect(readFileSync(path, 'utf8')).toBe(before)
  })
})

describe('what a report must not hide', () => {
  it('a reject that cannot be in time is refused, with the gap it needs', () => {
    const text = words(section(files.get('bag')!, 'checks', 'site-list'))
    expect(text).toContain('Refused: the timing cannot work.')
  })

  it('a class that a person set stands beside the one of the questions, with the reason', () => {
    const text = words(files.get('bag')!)
    expect(text).toMatch(
      /By the eight questions (?:proposed )?critical control point \(CCP\).*?a person set prerequisite \(PRP\): the sorter ahead carries it/,
    )
  })

  it('an empty log is a bound, and promised sizes are rounded up in every sentence', () => {
    expect(words(files.get("infants' powder")!)).toMatch(/at most [\d.]+: nothing was found/)
    const jar = words(files.get('jar and pouch')!)
    const [, promised] = /asked, ([\d.]+) mm promised/.exec(jar) ?? []
    expect(jar).toContain(`A size is predicted (${Number(promised)} mm safe to promise)`)
  })

  it('a machine whose class is open has its limit, monitoring and verification drafted', () => {
    const limits = words(section(files.get("infants' powder")!, 'limits', 'checks'))
    for (const part of ['Critical limit', 'Monitoring', 'Verification', 'not settled yet'])
      expect(limits).toContain(part)
  })
})
