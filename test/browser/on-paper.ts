import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import type { Page } from 'playwright-core'
import { expect } from 'vitest'

/** Letters of the standard fonts, in case a page asks for one without bringing it. */
const FONTS = join(
  dirname(createRequire(import.meta.url).resolve('pdfjs-dist/package.json')),
  'standard_fonts/',
)

/** The words of a PDF in the order of reading, runs of spaces and line ends as one space. */
async function wordsOf(pdf: Uint8Array): Promise<string> {
  const { getDocument } = await import('pdfjs-dist/legacy/build/pdf.mjs')
  const task = getDocument({ data: new Uint8Array(pdf), standardFontDataUrl: FONTS, verbosity: 0 })
  try {
    const sheets = await task.promise
    const words: string[] = []
    for (let sheet = 1; sheet <= sheets.numPages; sheet++) {
      const { items } = await (await sheets.getPage(sheet)).getTextContent()
      for (const item of items) if ('str' in item) words.push(item.hasEOL ? `${item.str} ` : item.str)
      words.push(' ')
    }
    return words.join('').replace(/\s+/g, ' ')
  } finally {
    await task.destroy()
  }
}

/** A printed sheet: its lines from top to bottom, without its number, and how far down its last one stands, 0 to 1. */
export interface Sheet {
  readonly lines: readonly string[]
  readonly filled: number
}

/** The page printed on a format and read back sheet by sheet. */
export async function sheetsPrinted(page: Page, format: string): Promise<Sheet[]> {
  const { getDocument } = await import('pdfjs-dist/legacy/build/pdf.mjs')
  const pdf = await page.pdf({ format, preferCSSPageSize: false })
  const task = getDocument({ data: new Uint8Array(pdf), standardFontDataUrl: FONTS, verbosity: 0 })
  try {
    const read = await task.promise
    const sheets: Sheet[] = []
    for (let at = 1; at <= read.numPages; at++) {
      const sheet = await read.getPage(at)
      const height = sheet.getViewport({ scale: 1 }).height
      const { items } = await sheet.getTextContent()
      const lines = new Map<number, string>()
      for (const item of items)
        if ('str' in item && item.str.trim() !== '') {
          const y = Math.round(item.transform[5])
          lines.set(y, `${lines.get(y) ?? ''}${item.str}`)
        }
      const kept = [...lines]
        .filter(([, line]) => !/^\s*\d+ ?\/ ?\d+\s*$/.test(line))
        .sort(([a], [b]) => b - a)
      sheets.push({
        lines: kept.map(([, line]) => line.replace(/\s+/g, ' ').trim()),
        filled: 1 - (kept.at(-1)?.[0] ?? height) / height,
      })
    }
    return sheets
  } finally {
    await task.destroy()
  }
}

/** The page printed on A4 and read back as text. */
export async function printed(page: Page): Promise<string> {
  const pdf = await page.pdf({ format: 'A4' })
  expect(pdf.subarray(0, 5).toString()).toBe('%PDF-')
  return wordsOf(pdf)
}

/** Sheets a page takes on "A4" or "Letter". */
export async function sheetsOf(page: Page, format: string): Promise<number> {
  const pdf = (await page.pdf({ format, preferCSSPageSize: false })).toString('latin1')
  return [...pdf.matchAll(/\/Type\s*\/Page\b(?!s)/g)].length
}
