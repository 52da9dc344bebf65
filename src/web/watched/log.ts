import { pino } from 'pino'

/** What is written: faults only, or every request as well. */
export const LOG_LEVELS = ['error', 'info'] as const
export type LogLevel = (typeof LOG_LEVELS)[number]

/** Written at once, so that a program that ends has said all it had to say. */
const standardError = pino.destination({ dest: 2, sync: true })
// Who reads the log may go; the program goes on.
standardError.on('error', () => {})

/** The program's log: one JSON value a line, on standard error. Nothing that a person sent is part of it. */
export const log = pino(
  { level: 'error', base: null, timestamp: pino.stdTimeFunctions.isoTime, messageKey: 'what' },
  standardError,
)

/** A fault by its kind and place. Its words are left out: they may quote what was sent. */
export function logFault(error: unknown, request: string | null = null): void {
  const { name, code, message = '', stack = '' } = error as NodeJS.ErrnoException
  const at = stack
    .replace(message, '')
    .split('\n')
    .filter((line) => /^ {4}at /.test(line))
  log.error(
    { request, kind: name ?? typeof error, code: code ?? null, at: at.map((line) => line.trim()) },
    'fault',
  )
}
