import type { LineTogether } from '../../src/contract/lines.ts'
import { listed } from '../words/listed.ts'

type Machine = LineTogether['machines'][number]

const without = (label: string) => label.replace(/ \(.*\)$/, '')

/** Which machines the products of a line need together, in one sentence. */
export function setWords({ set }: Pick<LineTogether, 'set'>): string {
  const { machines, met, asked } = set
  if (asked === 0) return 'No product of this line asks for a size, so nothing tells the machines apart.'
  if (machines.length === 0) return 'Nothing compared here meets a size asked of any product of this line.'
  const several = new Set(machines.map(({ point }) => point)).size > 1
  const names = listed(machines.map(({ label, point }) => `${without(label)}${several ? ` (${point})` : ''}`))
  const meet = machines.length === 1 ? 'meets' : 'together meet'
  if (met === asked) {
    const all = asked === 1 ? 'the one product that asks' : `all ${asked} products that ask`
    return `${capital(names)} ${meet} every size asked in ${all}.`
  }
  return `${capital(names)} ${meet} every size asked in ${met} of ${asked} products; no three machines compared here do better.`
}

const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1)

const BUILDS: Readonly<Record<string, string>> = {
  pack: 'for packs',
  wide: 'wide belt',
  case: 'for cases and blocks',
  bulk: 'bulk belt',
  pipe: 'on a pipe',
}

/** What a machine must be to take every pack of the line. */
export function buildWords({
  build,
  opening,
  askFor,
}: Pick<Machine, 'build' | 'opening' | 'askFor'>): string {
  if (askFor)
    return `none takes every pack: ask for ${Math.round(askFor.heightMm)} × ${Math.round(askFor.widthMm)} mm`
  if (opening) return `opening ${Math.round(opening.heightMm)} × ${Math.round(opening.widthMm)} mm`
  return build === null ? '–' : (BUILDS[build] ?? build)
}

/** "3 of 40", with the products it is kept from. */
export function metWords({ met, asked, unfit }: Pick<Machine, 'met' | 'asked' | 'unfit'>): string {
  const kept = unfit > 0 ? `, not suitable in ${unfit}` : ''
  return asked === 0 ? `no size asked${kept}` : `${met} of ${asked}${kept}`
}

/** The largest packs a line's machines are sized for. */
export const packWords = ({
  point,
  heightMm,
  widthMm,
  tallestRow,
  widestRow,
}: LineTogether['packs'][number]) =>
  `${point}: ${Math.round(heightMm)} mm high (row ${tallestRow}), ${Math.round(widthMm)} mm wide (row ${widestRow})`

/** A line by its name; a table need not name any. */
export const lineName = (line: string): string => (line === '' ? 'The line' : `Line ${line}`)
