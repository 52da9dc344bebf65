import { parseArgs } from 'node:util'
import { serve } from '../web/serving/serve.ts'
import { InputError } from './input.ts'

/** gritwise serve [--port 8317] [--listen 127.0.0.1] [--rules DIR] */
export async function serveCommand(args: string[]): Promise<number> {
  const { values } = parseArgs({
    args,
    options: {
      port: { type: 'string', default: '8317' },
      listen: { type: 'string', default: '127.0.0.1' },
      rules: { type: 'string', multiple: true, default: [] },
    },
  })
  const port = Number(values.port)
  if (!Number.isInteger(port) || port < 0 || port > 65535) {
    throw new InputError(`--port must be a whole number from 0 to 65535; ${values.port} was given`)
  }
  await serve({ port, listen: values.listen, rules: values.rules })
  return 0
}
