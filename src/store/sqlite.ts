import type { Database, Statement } from 'better-sqlite3'

/** A file of SQLite, as much of it as is needed here. */
export type Sqlite = Pick<Database, 'prepare' | 'exec' | 'close'>

/**
 * What the driver has handed out, held until the program ends. Under Node 24 the driver (12, the last for Node 20) ends the whole
 * program when one of its objects is collected between two tasks. The texts prepared are few: values are never part of them.
 */
const held: (Database | Map<string, Statement>)[] = []

/** Opens a file; the driver is loaded here, so that who keeps nothing needs none. Waits `timeout` ms for other writers. */
export async function openFile(file: string, timeout: number): Promise<Sqlite> {
  const { default: Driver } = await import('better-sqlite3')
  const database = new Driver(file, { timeout })
  const prepared = new Map<string, Statement>()
  held.push(database, prepared)
  const prepare = (source: string) => {
    const statement = prepared.get(source) ?? database.prepare(source)
    prepared.set(source, statement)
    return statement
  }
  return {
    prepare: prepare as Database['prepare'],
    exec: (source) => database.exec(source),
    close: () => database.close(),
  }
}
