import { describe, expect, it, vi } from 'vitest'
import { minutesOf, NINETY_MINUTES, readLesson, writeLesson } from '../../src/exercises/lesson.ts'
import { EXERCISES } from '../../src/exercises/list.ts'
import { VOICES } from '../../src/exercises/voice.ts'
import { dayIn } from '../../src/web/today.ts'
import { app, packed, text } from './stand-in.ts'

const get = async (path: string) => {
  const answer = await app.request(path)
  return { status: answer.status, location: answer.headers.get('location'), html: await answer.text() }
}
const hrefs = (html: string) =>
  [...html.matchAll(/href="([^"]+)"/g)].map(([, href = '']) => href.replaceAll('&amp;', '&'))

describe('the list', () => {
  it('leads to every exercise and both handouts', async () => {
    const { html } = await get('/exercises')
    for (const { id } of EXERCISES) expect(hrefs(html)).toContain(`/exercises/${id}`)
    expect(hrefs(html)).toContain('/exercises?handout=1&answers=0')
    expect(hrefs(html)).toContain('/exercises?handout=1&answers=1')
  })

  it('puts the exercises of the brief in hand first, and carries the brief on', async () => {
    const { html } = await get(`/exercises?b=${packed}`)
    expect(text(html)).toContain('From your brief: Kernels')
    expect(html.indexOf('own-smallest-size')).toBeLessThan(html.indexOf('/exercises/threshold-game'))
    expect(hrefs(html).filter((href) => href.startsWith('/exercises/') && !href.includes('b='))).toEqual([])
  })
})

describe('predict, then reveal', () => {
  it('asks before it tells', async () => {
    const { html } = await get('/exercises/jar-heel')
    expect(html).toContain('type="radio"')
    expect(text(html)).not.toContain('Nothing is found there')
  })

  it.each(EXERCISES.filter(({ timed }) => !timed).map(({ id }) => [id]))(
    '%s answers every question with reason and picture',
    async (id) => {
      let path = `/exercises/${id}?guess=-`
      for (let count = 0; path.startsWith(`/exercises/${id}?`); count++) {
        if (!path.includes('guess=')) path += '&guess=-'
        const { status, html } = await get(path)
        expect(status, path).toBe(200)
        expect(html).toContain('class="answer"')
        expect(html).toMatch(/<svg|class="bar-table"/)
        expect(html).toContain('id="why"')
        expect(html.match(/<h1/g)).toHaveLength(1)
        const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, one]) => one)
        expect(ids.filter((one, at) => ids.indexOf(one) !== at)).toEqual([])
        expect(html).not.toMatch(/<style| style="| on[a-z]+="|<script(?! src=)/)
        path =
          /class="onward"[^>]*|href="([^"]+)" class="onward"/.exec(html)?.[1]?.replaceAll('&amp;', '&') ?? ''
        expect(count).toBeLessThan(12)
      }
      expect(path).toMatch(/^\/exercises/)
    },
  )

  it('judges the prediction', async () => {
    expect(text((await get('/exercises/false-rejects-a-day?guess=115')).html)).toMatch(/was right/)
    expect(text((await get('/exercises/false-rejects-a-day?guess=20')).html)).toMatch(/was too low/)
    expect(text((await get('/exercises/jar-heel?guess=body')).html)).toMatch(/“The body”, was wrong/)
  })

  it('asks again, keeping what was typed, where it cannot be read', async () => {
    const number = await get('/exercises/false-rejects-a-day?guess=lots')
    expect(number.status).toBe(422)
    expect(number.html).toContain('value="lots"')
    expect(number.html).toContain('<title>Error:')
    expect((await get('/exercises/jar-heel?guess=moon')).status).toBe(422)
  })

  it('knows no other exercises', async () => {
    expect((await get('/exercises/nothing')).status).toBe(404)
    expect((await get('/exercises/own-hold')).status).toBe(404)
  })
})

describe('against the clock', () => {
  it('takes the time on the server, without script, and counts the packs that went by', async () => {
    vi.useFakeTimers({ toFake: ['Date'], now: Date.UTC(2026, 0, 1) })
    try {
      const start = await get('/exercises/failed-check?start=1')
      expect(start.status).toBe(303)
      let path = start.location!
      for (const guess of ['stop', 'all', 'bad', 'proof', 'open', 'short']) {
        const page = await get(path)
        expect(text(page.html)).toContain('the clock is running')
        expect(page.html).not.toContain('class="answer"')
        vi.setSystemTime(Date.now() + 15_000)
        path = (await get(`${path}&guess=${guess}`)).location!
      }
      const { html, status } = await get(path)
      expect(status).toBe(200)
      expect(text(html)).toContain('1 min 30 s, 5 of 6 right')
      expect(text(html)).toContain('120 packs would have gone by')
      vi.setSystemTime(Date.now() + 999_000)
      expect(text((await get(path)).html)).toContain('1 min 30 s')
      expect(hrefs(html).join()).toContain('failed-check_stop_all_bad_proof_open_short!90'.replace('!', '!'))
    } finally {
      vi.useRealTimers()
    }
  })

  it('starts anew where the clock in the address cannot be', async () => {
    for (const began of ['0', '-5', 'x', String(Date.now() + 1e9)])
      expect(text((await get(`/exercises/failed-check?began=${began}`)).html)).toContain('Start the clock')
  })
})

describe('in front of a room', () => {
  it('shows one thing on a screen, with links back and on', async () => {
    const ask = (await get('/exercises/foil-and-film?present=1')).html
    expect(ask).toContain('for-the-room')
    expect(ask).toMatch(/<ol class="options">/)
    expect(ask).toMatch(/<button type="submit" class="onward" form="hands" autofocus/)
    const answer = (await get('/exercises/foil-and-film?present=1&guess=-')).html
    expect(answer).toContain('class="answer"')
    expect(answer).not.toMatch(/A closed foil carries currents/)
    const why = (await get(/href="([^"]+)" rel="next"/.exec(answer)![1]!.replaceAll('&amp;', '&'))).html
    expect(text(why)).toMatch(/A closed foil carries currents/)
    expect(why).toContain('<svg')
    expect(why).toMatch(/rel="prev"/)
    for (const html of [ask, answer, why]) {
      expect(html).not.toContain('class="masthead"')
      expect(html.match(/autofocus/g)).toHaveLength(1)
    }
  })

  it('counts hands, draws them beside the answer, and keeps the score of the room in the address', async () => {
    const first = '/exercises/foil-and-film?present=1'
    const sent = await get(`${first}&hand=3&hand=&hand=8&hand=1`)
    expect(sent.status).toBe(303)
    expect(sent.location).toContain('guess=hands.3.0.8.1')
    expect(text((await get(sent.location!)).html)).toMatch(/8 of 12 hands right/)
    const second = `${first}&q=2&g=hands.3.0.8.1&guess=hands.0.0.2.6.4`
    expect(text((await get(second)).html)).toMatch(/4 of 12 hands right; the room so far 12 of 24 \(50 %\)/)
    expect((await get(`${first}&hand=&hand=&hand=&hand=`)).location).toContain('guess=-')
    const wrong = await get(`${first}&hand=three&hand=1`)
    expect(wrong.status).toBe(422)
    expect(wrong.html).toContain('value="three"')
    expect(text(wrong.html)).toContain('Give whole numbers from 0 to 999')
  })

  it('leads through the list by the way on alone', async () => {
    let path = `/exercises/${EXERCISES[0]!.id}?present=1`
    const seen = new Set<string>()
    for (let screens = 0; screens < 200; screens++) {
      const { html, status, location } = await get(path)
      expect(status, path).toBeLessThan(400)
      seen.add(/^\/exercises\/([a-z0-9-]+)/.exec(path)?.[1] ?? '')
      if (seen.has('hold-and-interval')) break
      const on = /href="([^"]+)" rel="next"/.exec(html)?.[1]?.replaceAll('&amp;', '&')
      path = location ?? on ?? `${path}&guess=-`
    }
    expect(seen.size).toBe(EXERCISES.findIndex(({ id }) => id === 'hold-and-interval') + 1)
  })
})

describe('on paper', () => {
  it('asks without answering, or answers all', async () => {
    const questions = (await get('/exercises?handout=1&answers=0')).html
    expect(questions).not.toMatch(/class="answer"|bar-table|☒|◀/)
    expect(questions.match(/<svg class="plane/g)!.length).toBeGreaterThanOrEqual(5)
    expect(text(questions)).not.toContain('comes to rest here')
    expect(questions.match(/☐/g)!.length).toBeGreaterThan(40)
    const answers = (await get('/exercises?handout=1&answers=1')).html
    const ids = [...answers.matchAll(/ id="([^"]+)"/g)].map(([, one]) => one)
    expect(ids.filter((one, at) => ids.indexOf(one) !== at)).toEqual([])
    expect(answers.match(/☒/g)!.length).toBeGreaterThan(20)
    // "Is that right?" is nothing without the saying it asks about.
    expect(text(answers)).toContain('Half the belt speed finds stones of half the size.')
    expect(answers).not.toMatch(/<a href="\/(?!assets)|<button/)
  })

  it('takes one exercise alone', async () => {
    const { html } = await get('/exercises?handout=1&answers=1&only=jar-heel')
    expect(html.match(/class="handout"/g)).toHaveLength(1)
  })

  it('records who predicted what, with the result worked out anew', async () => {
    const { html } = await get(
      '/exercises/record?done=jar-heel_base~dual-even-food_half~failed-check_stop_all_bad_proof_open_whole!61&name=A.+Person&trainer=T&print=1',
    )
    const said = text(html)
    expect(said).toContain('7 of 8 predictions right')
    expect(said).toContain('A. Person')
    expect(said).toContain('in 1 min 1 s')
    expect(said).toMatch(/more than two fifths wrong: It stays the same/)
  })

  it('is a form to fill in by hand where nothing was predicted', async () => {
    const { html } = await get('/exercises/record?print=1')
    for (const exercise of EXERCISES) expect(text(html)).toContain(exercise.title(VOICES.full))
    expect(html.match(/<tr>/g)!.length).toBe(EXERCISES.length + 1)
  })
})

describe('a trainer', () => {
  const plan =
    '/exercises/lesson?order-jar-heel=2&minutes-jar-heel=8&note-jar-heel=Bring+a+jar~!&order-routine-check=1'

  it('chooses exercises, order, minutes and notes; all of it stays in the address', async () => {
    const sent = await get(plan)
    expect(sent.status).toBe(303)
    expect(decodeURIComponent(sent.location!)).toBe(
      '/exercises/lesson?lesson=routine-check~jar-heel!8!Bring a jar',
    )
    const { html } = await get(sent.location!)
    expect(text(html)).toContain('Your lesson: 2 exercises, 8 minutes')
    expect(html).toContain('>Bring a jar</textarea>')
    const begin = hrefs(html).find((href) => href.startsWith('/exercises/routine-check?'))!
    expect(begin).toContain('present=1')
    const last = await get(`${begin}&q=2&guess=c2&s=why`)
    expect(hrefs(last.html).find((href) => href.startsWith('/exercises/jar-heel'))).toContain('lesson=')
    const end = await get(`${begin.replace('/routine-check', '/jar-heel')}&guess=base&s=why`)
    expect(text(end.html)).toContain('Back to all exercises')
  })

  it('prints one handout and one answer sheet of the lesson, notes on the sheet alone', async () => {
    const lesson = encodeURIComponent('routine-check!10!~jar-heel!8!Bring a jar')
    const handout = (await get(`/exercises?handout=1&answers=0&lesson=${lesson}`)).html
    const sheet = (await get(`/exercises?handout=1&answers=1&lesson=${lesson}`)).html
    for (const html of [handout, sheet]) expect(html.match(/class="handout"/g)).toHaveLength(2)
    expect(handout).not.toContain('Bring a jar')
    expect(text(sheet)).toContain('The heel of the jar, 8 min')
    expect(sheet).toContain('Bring a jar')
  })

  it('is told what cannot be a place or a time, and keeps what was typed', async () => {
    const { status, html } = await get('/exercises/lesson?order-jar-heel=first&minutes-jar-heel=999')
    expect(status).toBe(422)
    expect(text(html)).toMatch(/Place of [^:]+: a whole number from 1 to 99/)
    expect(text(html)).toMatch(/Minutes for [^:]+: a whole number from 1 to 240/)
    expect(html).toContain('value="first"')
  })

  it('can start from ninety minutes that are ninety, of exercises there are', () => {
    expect(minutesOf(NINETY_MINUTES)).toBe(90)
    for (const { id } of NINETY_MINUTES) expect(EXERCISES.map((one) => one.id)).toContain(id)
    expect(readLesson(writeLesson(NINETY_MINUTES))).toEqual(NINETY_MINUTES)
    expect(readLesson('jar-heel!0!x~jar-heel!5~<b>!3~routine-check!2.5')).toEqual([
      { id: 'jar-heel', minutes: null, note: 'x' },
      { id: 'routine-check', minutes: null, note: '' },
    ])
  })

  it('records scores, pass mark, statement and the day to train again', async () => {
    const done = 'jar-heel_base~foil-and-film_hands.1.2.9.0_-'
    const said = text((await get(`/exercises/record?done=${done}&pass=90&months=6&name=A`)).html)
    expect(said).toContain('1 of 1 predictions right: the pass mark of 90 % is reached')
    expect(said).toMatch(/The heel of the jar 1 of 1 100 % Foil and metallised film hands: 9 of 12 \(75 %\)/)
    expect(said).toContain('They say nothing of one person and are not counted')
    expect(said).toContain('Statement of competence')
    expect(said).toContain(`To be trained again by ${dayIn(6)}`)
    const mixed = text((await get('/exercises/record?done=jar-heel_base~routine-check_c1_c1&pass=67')).html)
    expect(mixed).toContain('2 of 3 predictions right: the pass mark of 67 % is not reached')
    const refused = await get('/exercises/record?pass=ten')
    expect(refused.status).toBe(422)
    expect(text(refused.html)).toContain('The pass mark must be a whole number from 1 to 100')
  })

  it('has a line for everybody of a class', async () => {
    const { html } = await get('/exercises/record?class=1&people=Ann%0ABob%0A&lesson=jar-heel')
    expect(html.match(/<tr>/g)).toHaveLength(3)
    expect((await get('/exercises/record?class=1')).html.match(/<tr>/g)).toHaveLength(13)
  })

  it('counts months from the last days of a month', () => {
    expect(dayIn(1, new Date(2026, 0, 31))).toBe('28 February 2026')
    expect(dayIn(12, new Date(2026, 10, 27))).toBe('27 November 2027')
  })
})

describe('plain words', () => {
  it('stay plain from page to page', async () => {
    const { html } = await get('/exercises/routine-check?words=plain&guess=c1')
    expect(text(html)).not.toMatch(/binomial|confiden|chance/i)
    const onward = hrefs(html).filter((href) => href.startsWith('/exercises') && href !== '/exercises')
    expect(onward.length).toBeGreaterThan(2)
    for (const href of onward) expect(href).toContain('words=plain')
  })
})
