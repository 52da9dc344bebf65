/**
 * The header that names a file (RFC 6266): the name itself in UTF-8 (RFC 8187), and one in ASCII for readers that know
 * no other. @param name made by fileName, with its ending
 */
export function disposition(kind: 'attachment' | 'inline', name: string): string {
  const ascii = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^\w.-]/g, '-')
  const both = ascii === name ? '' : `; filename*=UTF-8''${encodeURIComponent(name)}`
  return `${kind}; filename="${ascii}"${both}`
}
