import { type ChildProcess, spawn } from 'node:child_process'

export interface Started {
  readonly child: ChildProcess
  readonly address: string
}

/** Starts a server as a process of its own and waits until it says where it is. */
export function started(...args: string[]): Promise<Started> {
  const child = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'inherit'] })
  return new Promise((resolve, reject) => {
    let said = ''
    child.stdout?.on('data', (chunk: Buffer) => {
      said += chunk
      const address = /http:\/\/127\.0\.0\.1:\d+\//.exec(said)?.[0]
      if (address) resolve({ child, address })
    })
    child.once('exit', (code) => reject(new Error(`ended with ${code}: ${said}`)))
  })
}
