import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'

setFlagsFromString('--expose-gc')
const collect = runInNewContext('gc') as () => void

/** Memory that is still needed, MB: what nobody holds any more is thrown away first. */
export function neededMb(): number {
  collect()
  const { heapUsed, external } = process.memoryUsage()
  return (heapUsed + external) / 1e6
}
