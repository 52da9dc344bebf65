import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { expect, it } from 'vitest'
import { IN_MEMORY } from '../../src/store/open.ts'
import { openFile } from '../../src/store/sqlite.ts'

it('collects nothing the driver has handed out, which would end the program under Node 24', async () => {
  const weak = await (async () => {
    const database = await openFile(IN_MEMORY, 0)
    database.exec('create table t (x integer)')
    for (let k = 0; k < 50; k++) database.prepare('insert into t values (?)').run(k)
    const statement = database.prepare('select x from t')
    expect(statement.all()).toHaveLength(50)
    expect(database.prepare('select x from t')).toBe(statement)
    database.close()
    return new WeakRef(statement)
  })()
  setFlagsFromString('--expose-gc')
  const collect = runInNewContext('gc') as () => void
  for (let k = 0; k < 3; k++) {
    await new Promise(setImmediate)
    collect()
  }
  expect(weak.deref()).toBeDefined()
})
