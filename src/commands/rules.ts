import { runExamples } from '../advice/book/rule-examples.ts'
import { loadRulebook } from '../advice/book/rulebook.ts'
import { InputError } from './input.ts'
import { tryExample } from './try-example.ts'

/** gritwise rules check [DIR]: lint the book (with DIR laid over it) and run every rule's examples. */
export async function rulesCommand(args: string[]): Promise<number> {
  const [verb, directory, ...more] = args
  if (verb !== 'check' || more.length > 0) throw new InputError('rules knows one verb: rules check [DIR]')
  const book = loadRulebook(directory ? [directory] : [])
  const report = await runExamples(book, tryExample(book))
  for (const failure of report.failures) {
    process.stdout.write(`${failure.file} ${failure.rule}, example ${failure.example}: ${failure.message}\n`)
  }
  for (const id of report.neverFired) process.stdout.write(`${id}: fires in no example\n`)
  for (const id of report.alwaysFired) process.stdout.write(`${id}: fires in every example\n`)
  const passed = report.results.length - report.failures.length
  process.stdout.write(
    `${book.rules.length} rules, ${report.results.length} examples: ${passed} hold, ${report.failures.length} fail\n`,
  )
  return report.failures.length === 0 ? 0 : 1
}
