import { HTTPException } from 'hono/http-exception'
import type { Keeping } from '../kept-store/keeping.ts'

/** Says to whoever watches whether the program answers and reaches what it keeps: 200, or 503 where the database is away. */
export async function health(keeping: Keeping): Promise<Response> {
  try {
    await (await keeping.store()).ping()
    return said(200, 'reached')
  } catch (error) {
    // Without a driver or a folder to write to, all but keeping works.
    const nothingKept = error instanceof HTTPException && error.status === 501
    return said(nothingKept ? 200 : 503, nothingKept ? 'nothing is kept' : 'not reached')
  }
}

const said = (status: number, store: string) =>
  Response.json({ answers: true, store }, { status, headers: { 'cache-control': 'no-store' } })
