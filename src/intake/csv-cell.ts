/** A field of a CSV row: quoted where it must be; a cell that a spreadsheet would run as a formula is disarmed. */
export function csvCell(value: string | number | null | undefined): string {
  if (value === null || value === undefined) return ''
  const text = typeof value === 'number' ? String(Number(value.toPrecision(6))) : value
  const safe = typeof value === 'string' && /^[=+\-@\t\r＝＋－＠]/.test(text) ? `'${text}` : text
  return /[",;\r\n\t]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe
}
