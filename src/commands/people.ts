import { parseArgs } from 'node:util'
import { NoStore, openStore, usualPlace } from '../store/open.ts'
import { wrongName, wrongPassword } from '../store/people/account.ts'
import { ROLES } from '../store/people/people.ts'
import { InputError, readText } from './input.ts'
import { Trouble } from './output.ts'

/** gritwise people list | add NAME [--role ROLE] [--workspace W] [--by-proxy] | password NAME; passwords from standard input */
export async function peopleCommand(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      role: { type: 'string', default: 'administrator' },
      workspace: { type: 'string', default: 'main' },
      'by-proxy': { type: 'boolean', default: false },
    },
  })
  const [verb, name = '', ...more] = positionals
  const { workspace } = values
  const role = ROLES.find((one) => one === values.role)
  if (!role) throw new InputError(`--role is one of ${ROLES.join(', ')}`)
  if (
    more.length > 0 ||
    (verb === 'list' && name !== '') ||
    !['list', 'add', 'password'].includes(verb ?? '')
  )
    throw new InputError('people knows: people list, people add NAME, people password NAME')
  const wrong = verb === 'list' ? null : wrongName(name)
  if (wrong) throw new InputError(wrong)
  const password = verb === 'list' || values['by-proxy'] ? null : await passwordRead()
  const store = await openStore(usualPlace()).catch((error) => {
    throw error instanceof NoStore ? new Trouble(error.message) : error
  })
  try {
    if (verb === 'list') {
      for (const one of await store.people.list(workspace)) process.stdout.write(`${one.name}\t${one.role}\n`)
      return 0
    }
    const done =
      verb === 'add'
        ? await store.people.add({ name, workspace, role }, password, 'the command line')
        : await store.people.change(workspace, name, { password: password ?? '' }, 'the command line')
    if (!done)
      throw new InputError(verb === 'add' ? `the name ${name} is taken` : `${name} is not in ${workspace}`)
    return 0
  } finally {
    await store.close()
  }
}

/** The first line of standard input. */
async function passwordRead(): Promise<string> {
  if (process.stdin.isTTY) process.stderr.write('Password (it is shown while you type): ')
  const password = (await readFirstLine()) ?? ''
  const wrong = wrongPassword(password)
  if (wrong) throw new InputError(wrong)
  return password
}

async function readFirstLine(): Promise<string | undefined> {
  if (!process.stdin.isTTY) return (await readText('-')).split(/\r?\n/)[0]
  for await (const chunk of process.stdin) return String(chunk).split(/\r?\n/)[0]
  return undefined
}
