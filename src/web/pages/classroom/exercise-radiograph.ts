import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { EXERCISES } from '../../../exercises/list.ts'
import { VOICES } from '../../../exercises/voice.ts'
import { disposition } from '../../shown/attachment.ts'

/** The radiograph beside the answer of an exercise as PNG: it holds no marks. */
export const exerciseRadiograph = (c: Context) => {
  const pictures = EXERCISES.find(({ id }) => id === c.req.param('id'))
    ?.questions(VOICES.full)
    .flatMap((question) => question.pictures)
  const picture = pictures?.find(({ kind }) => kind === 'radiograph')
  if (picture?.kind !== 'radiograph')
    throw new HTTPException(404, { message: 'This exercise has no radiograph.' })
  return c.body(new Uint8Array(picture.taken().png).buffer, 200, {
    'content-type': 'image/png',
    'content-disposition': disposition('inline', 'radiograph.png'),
  })
}
