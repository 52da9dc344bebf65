import { problemsOf } from '../../../brief/index.ts'
import { MOST_BYTES_OF_RUNS } from '../../../intake/bounds.ts'
import { readJsonText } from '../../../intake/json-text.ts'
import { exportSchema } from '../../../store/kept.ts'
import { postedForm } from '../../asked/form-answers.ts'
import { refuse } from '../../asked/refusal.ts'
import type { Handler } from '../../people/within.ts'

/** Everything that is kept, with all revisions, as one file. */
export const exportKept: Handler = async (c, store, { workspace }) => {
  c.header('content-disposition', 'attachment; filename="gritwise-kept.json"')
  return c.json(await store.exportAll(workspace))
}

export const importKept: Handler = async (c, store, { name, workspace }) => {
  const { file } = await postedForm(c)
  if (!(file instanceof File) || file.size === 0)
    return refuse([{ path: 'file', message: 'choose a file that was taken out here before' }])
  // Every revision of everything has no bound of its own but its bytes, which the door counts.
  const json = readJsonText(await file.text(), MOST_BYTES_OF_RUNS, Number.POSITIVE_INFINITY)
  if (!json.ok) return refuse([{ path: 'file', message: `the file: ${json.because}` }])
  const read = exportSchema.safeParse(json.value)
  if (!read.success)
    return refuse(
      problemsOf(read.error.issues, json.value, exportSchema).map((one) => ({
        ...one,
        path: ['file', one.path].filter(Boolean).join('.'),
      })),
    )
  const { added, changed, same } = await store.importAll(workspace, read.data, name)
  return c.redirect(`/kept?imported=${added}-${changed}-${same}`, 303)
}
