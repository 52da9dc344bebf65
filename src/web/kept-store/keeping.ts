import { HTTPException } from 'hono/http-exception'
import { NoStore, openStore, type Place } from '../../store/open.ts'
import type { Store } from '../../store/store.ts'
import { Busy } from '../serving/busy.ts'

/** The store of a server: opened when first asked for, and again after it could not be reached. */
export interface Keeping {
  readonly store: () => Promise<Store>
  readonly close: () => Promise<void>
}

export function keepingIn(place: Place): Keeping {
  let opening: Promise<Store> | null = null
  const store = async () => {
    opening ??= openStore(place)
    try {
      return await opening
    } catch (error) {
      opening = null
      throw unavailable(error)
    }
  }
  return {
    store,
    close: async () => {
      const open = await opening?.catch(() => null)
      await open?.close()
    },
  }
}

/** What a store that cannot be used says to whoever asks. */
export function unavailable(error: unknown): Error {
  if (error instanceof NoStore)
    return new HTTPException(501, { message: `Nothing can be kept: ${error.message}.` })
  if (error instanceof HTTPException) return error
  const code = (error as { code?: string }).code ?? ''
  if (/^(?:EEXIST|ENOTDIR|EACCES|EPERM|EROFS|SQLITE_READONLY|SQLITE_NOTADB)/.test(code))
    return new HTTPException(501, {
      message:
        'Nothing can be kept: the data folder cannot be written to. Give another with GRITWISE_DATA or XDG_DATA_HOME.',
    })
  if (code === 'SQLITE_FULL' || code === 'ENOSPC' || code === '53100')
    return new HTTPException(507, { message: 'The disk is full: nothing was kept, and nothing was lost.' })
  if (
    /^(?:ECONN|EPIPE|ENOTFOUND|ETIMEDOUT|SQLITE_BUSY|SQLITE_CANTOPEN|57P|08)/.test(code) ||
    /connection|timeout/i.test(String(error))
  )
    return new Busy(
      'The database cannot be reached now. Nothing was kept; what stands in the address is not lost.',
      5,
    )
  return error as Error
}
