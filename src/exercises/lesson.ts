/** One exercise of a lesson, as its trainer planned it. */
export interface LessonPart {
  readonly id: string
  /** null where none were given. */
  readonly minutes: number | null
  readonly note: string
}

const MOST_CHARACTERS = 8000
export const MOST_NOTE = 200
export const MOST_MINUTES = 240

/** A note as it can travel: without the signs that part a lesson. */
export const noteOf = (text: string): string =>
  text
    .replace(/[~!\s]+/g, ' ')
    .trim()
    .slice(0, MOST_NOTE)

/** Reads "id!minutes!note~id!minutes"; what does not fit is left out, and so is what comes twice. */
export function readLesson(text: string | undefined): LessonPart[] {
  if (!text || text.length > MOST_CHARACTERS) return []
  const parts = text.split('~').flatMap((part): LessonPart[] => {
    const [id = '', minutes = '', note = ''] = part.split('!')
    const value = Number(minutes)
    const counts = minutes !== '' && Number.isInteger(value) && value > 0 && value <= MOST_MINUTES
    return /^[a-z0-9-]+$/.test(id) ? [{ id, minutes: counts ? value : null, note: noteOf(note) }] : []
  })
  return parts.filter(({ id }, at) => parts.findIndex((other) => other.id === id) === at)
}

export const writeLesson = (parts: readonly LessonPart[]): string =>
  parts.map(({ id, minutes, note }) => `${id}!${minutes ?? ''}!${noteOf(note)}`.replace(/!+$/, '')).join('~')

export const minutesOf = (parts: readonly LessonPart[]): number =>
  parts.reduce((sum, { minutes }) => sum + (minutes ?? 0), 0)

/** Ninety minutes as a first lesson: what happens at the line, then what each machine sees, then the bet on both. */
export const NINETY_MINUTES: readonly LessonPart[] = [
  { id: 'routine-check', minutes: 10, note: 'Ask who has run the piece again until it was found.' },
  { id: 'failed-check', minutes: 12, note: 'One table answers, the others watch the clock.' },
  { id: 'hold-and-interval', minutes: 8, note: 'Take your own packs a minute afterwards.' },
  { id: 'false-alarms', minutes: 12, note: 'Bring a reject from the bin.' },
  { id: 'foil-and-film', minutes: 8, note: 'Bring both wraps.' },
  { id: 'card-or-inside', minutes: 7, note: '' },
  { id: 'turning-a-wire', minutes: 8, note: 'A paper clip and a drawn coil on the board help.' },
  { id: 'thin-and-fast', minutes: 7, note: '' },
  { id: 'jar-heel', minutes: 8, note: 'Bring an empty jar.' },
  { id: 'misconceptions', minutes: 10, note: 'Last, as a race between two halves of the room.' },
]
