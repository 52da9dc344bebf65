import { openStore } from '../../src/store/open.ts'

/** Keeps one revision after another and says each on standard output once it is promised, until somebody ends it. */
const [file = '', id = '', from = '1'] = process.argv.slice(2)
const store = await openStore({ file })
for (let revision = Number(from); ; revision++) {
  const saved = await store.save('w', id, revision, { title: 'K', body: { revision: revision + 1 }, by: 'k' })
  if (!saved?.ok) throw new Error('another writes')
  process.stdout.write(`${saved.revision}\n`)
}
