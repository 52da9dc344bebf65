import type { Register } from '../../src/contract/register.ts'

/** What changed since the last issue: as a person says it, and as two briefs differ. */
export function Changed({ changes, register }: { changes: readonly string[] | null; register: Register }) {
  const said = register.plant.find(({ id }) => id === 'plant.changed')?.value ?? ''
  return (
    <section aria-labelledby="changed">
      <h2 id="changed">What changed</h2>
      <p>{said === '' ? 'Nobody has said what changed since the last issue.' : said}</p>
      {changes === null ? (
        <p>No earlier issue was compared.</p>
      ) : changes.length === 0 ? (
        <p>Compared with the earlier issue the brief and the versions are the same.</p>
      ) : (
        <ul>
          {changes.map((change) => (
            <li>{change}</li>
          ))}
        </ul>
      )}
    </section>
  )
}
