import type { Context } from 'hono'
import type { FragmentAnswers } from '../../../../views/fragment/fragment-form.tsx'
import { FragmentPage } from '../../../../views/fragment/fragment-page.tsx'
import { wouldHaveFound } from '../../../advice/found/fragment.ts'
import { readMeasure } from '../../../brief/form/measure.ts'
import { parseFragment } from '../../../brief/index.ts'
import { adviseGiven } from '../../advise-given.ts'
import type { Advise } from '../../advisor.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import type { House } from '../../house-book.ts'
import { showPage } from '../../show-page.ts'
import { contaminants } from '../../shown/choices.ts'

/** Fields of the form by the fields of the fragment. */
const FIELDS = { sizeMm: 'size', lengthMm: 'length', faceMm2: 'face' } as const
const LABELS = { size: 'Size', length: 'Length of a wire', face: 'Face of a flake' } as const

/** The fragment as typed, and what could not be read. */
function readFragment(answers: FragmentAnswers) {
  const problems = new Map<string, string>()
  const fragment: Record<string, unknown> = { shape: answers.shape, placement: answers.placement }
  if (answers.material === '') problems.set('material', 'Choose the material of the piece')
  else fragment.material = answers.material
  for (const [key, name] of Object.entries(FIELDS) as ['sizeMm', 'size'][]) {
    const typed = answers[name].trim()
    if (typed === '') continue
    const read = readMeasure(typed, key === ('faceMm2' as string) ? 'mm²' : 'mm')
    if (read.ok) fragment[key] = read.value
    else problems.set(name, `${LABELS[name]}: ${read.because}`)
  }
  if (answers.size.trim() === '') problems.set('size', 'Enter the size of the piece')
  return { fragment, problems }
}

/** The form field a problem of the fragment belongs to. */
function fieldOf(path: string): string {
  const key = path.replace(/^fragment\.?/, '')
  return (FIELDS as Readonly<Record<string, string>>)[key] ?? (key === '' ? 'material' : key)
}

/** A found piece and the brief in the address: would we have found this? */
export const fragmentPage = (answers: Advise, house: House) => async (c: Context) => {
  const { packed, brief } = goodBrief(c)
  const said = (name: string, usual = '') => c.req.query(name) ?? usual
  const typed: FragmentAnswers = {
    material: said('material'),
    shape: said('shape', 'sphere'),
    size: said('size'),
    length: said('length'),
    face: said('face'),
    placement: said('placement', 'inside'),
  }
  const asked = c.req.query('size') !== undefined
  const { fragment, problems } = asked
    ? readFragment(typed)
    : { fragment: {}, problems: new Map<string, string>() }
  const parsed = asked && problems.size === 0 ? parseFragment(brief.given, fragment) : null
  if (parsed && !parsed.ok)
    for (const { path, message } of parsed.problems)
      problems.set(fieldOf(path), message.charAt(0).toUpperCase() + message.slice(1))
  const answer = parsed?.ok
    ? await wouldHaveFound(parsed.brief, parsed.piece, parsed.given, adviseGiven(answers), house.book())
    : null
  const page = (
    <FragmentPage
      title={brief.title}
      packed={packed}
      answers={typed}
      problems={problems}
      contaminants={contaminants}
      answer={answer}
    />
  )
  return showPage(c, page, problems.size > 0 ? 422 : 200)
}
