import type { Context } from 'hono'
import { wantedOf } from '../../../views/advice/sizes/findings.ts'
import type { Sitting } from '../../../views/exercises/links.ts'
import { pieceWords } from '../../../views/words/contaminant.ts'
import type { Brief } from '../../contract/index.ts'
import type { Exercise } from '../../exercises/exercise.ts'
import { type HandScore, roomScore } from '../../exercises/hands.ts'
import { type LessonPart, readLesson, writeLesson } from '../../exercises/lesson.ts'
import { EXERCISES } from '../../exercises/list.ts'
import { ownExercises } from '../../exercises/own/own-exercises.ts'
import { type Done, readDone, writeDone } from '../../exercises/sitting.ts'
import { VOICES, type Voice } from '../../exercises/voice.ts'
import type { Advisor } from '../advisor.ts'
import { goodBrief } from '../asked/asked-brief.ts'
import { materialNames } from './choices.ts'

/** A sitting as the address carries it, with the exercises its brief makes. */
export interface AskedSitting {
  readonly sitting: Sitting
  readonly voice: Voice
  readonly done: readonly Done[]
  readonly brief: Brief | null
  readonly own: readonly Exercise[]
  /** The trainer's choice, of exercises that are known here. */
  readonly lesson: readonly LessonPart[]
  /** The exercises in the order they are taken: of the lesson, or all. */
  readonly order: readonly Exercise[]
  readonly find: (id: string) => Exercise | undefined
}

export async function askedSitting(c: Context, advisor: Advisor): Promise<AskedSitting> {
  const level = c.req.query('words') === 'plain' ? 'plain' : 'full'
  const done = readDone(c.req.query('done'))
  const given = c.req.query('b') === undefined ? null : goodBrief(c)
  const own = given ? await ownOf(given.brief, advisor) : []
  const all = [...own, ...EXERCISES]
  const find = (id: string) => all.find((exercise) => exercise.id === id)
  const lesson = readLesson(c.req.query('lesson')).filter(({ id }) => find(id))
  return {
    sitting: {
      packed: given?.packed ?? null,
      level,
      present: c.req.query('present') === '1',
      done: writeDone(done),
      lesson: writeLesson(lesson),
    },
    voice: VOICES[level],
    done,
    brief: given?.brief ?? null,
    own,
    lesson,
    order: lesson.length > 0 ? lesson.flatMap(({ id }) => find(id) ?? []) : all,
    find,
  }
}

async function ownOf(brief: Brief, advisor: Advisor): Promise<Exercise[]> {
  const advice = await advisor.quick(brief)
  return ownExercises({
    brief,
    advice,
    pieces: wantedOf(advice).map((piece) => pieceWords(piece, materialNames)),
  })
}

/** Hands counted over the sitting, and how many were right. */
export const handsOf = ({ done, find, voice }: AskedSitting): HandScore =>
  roomScore(
    done.flatMap(({ id, guesses }) => {
      const questions = find(id)?.questions(voice)
      return questions ? [{ questions, guesses }] : []
    }),
  )
