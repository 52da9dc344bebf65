import { chmodSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/** One temporary folder for all that the tests put down, gone when they end. */
export default function temporaryFolder(): () => void {
  const folder = mkdtempSync(join(tmpdir(), 'gritwise-tests-'))
  // A database started under an account of its own has to find its way through.
  chmodSync(folder, 0o711)
  process.env.TMPDIR = folder
  return () => rmSync(folder, { recursive: true, force: true })
}
