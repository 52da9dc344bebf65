// Completes a build: what the compiler does not copy, the running program still needs.
import { chmodSync, cpSync, rmSync } from 'node:fs'

const root = new URL('../', import.meta.url)
const at = (path) => new URL(path, root)

for (const folder of ['src/reference/data', 'src/web/assets', 'rules']) {
  rmSync(at(`dist/${folder}`), { recursive: true, force: true })
  cpSync(at(folder), at(`dist/${folder}`), { recursive: true })
}
cpSync(at('package.json'), at('dist/package.json'))
chmodSync(at('dist/src/main.js'), 0o755)
