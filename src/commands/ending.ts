import { RulebookError } from '../advice/book/rule-problem.ts'
import { InputError } from './input.ts'
import { Trouble, writeTrouble } from './output.ts'

/** How a command that failed ends: what is said, and with which exit code. */
export function endingOf(error: unknown): { readonly said: string; readonly code: 1 | 2 } {
  const { code, message } = error as { code?: unknown; message?: unknown }
  const wrongArguments = typeof code === 'string' && code.startsWith('ERR_PARSE_ARGS')
  if (error instanceof InputError || error instanceof RulebookError || wrongArguments)
    return { said: String(message), code: 2 }
  if (error instanceof Trouble) return { said: String(message), code: 1 }
  return { said: `a fault in this program, not in the input: ${String(message ?? error)}`, code: 1 }
}

/** Ends in words where standard output takes no more: the disk is full, or the reader has gone. */
export function watchOutput(): void {
  process.stdout.on('error', (error) => {
    process.stderr.write(`gritwise: the output is not whole: ${writeTrouble(error)}\n`)
    process.exit(1)
  })
}
