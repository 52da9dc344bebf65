/**
 * JSON text that is the same for the same content: keys of plain objects sorted,
 * one line per entry down to `depth` levels, everything deeper on one line.
 */
export function stableJson(value: unknown, depth: number): string {
  return `${write(value, depth, '')}\n`
}

function write(value: unknown, depth: number, indent: string): string {
  if (value === null || typeof value !== 'object') return JSON.stringify(value)
  const deeper = `${indent} `
  const parts = Array.isArray(value)
    ? value.map((item) => write(item, depth - 1, deeper))
    : Object.entries(value)
        .filter(([, item]) => item !== undefined)
        .sort(([a], [b]) => (a < b ? -1 : 1))
        .map(([key, item]) => `${JSON.stringify(key)}: ${write(item, depth - 1, deeper)}`)
  const [open, close] = Array.isArray(value) ? ['[', ']'] : ['{', '}']
  if (parts.length === 0) return `${open}${close}`
  return depth > 0
    ? `${open}\n${deeper}${parts.join(`,\n${deeper}`)}\n${indent}${close}`
    : `${open}${parts.join(', ')}${close}`
}
