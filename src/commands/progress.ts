import type { WriteStream } from 'node:tty'

/** How often the line of progress is drawn, ms. */
const EVERY_MS = 200

/** How far a long work is, drawn over itself on a terminal; silent where nobody watches. */
export function progressOn(terminal: Pick<WriteStream, 'isTTY' | 'write'>, all: number) {
  const begun = Date.now()
  let done = 0
  let drawn = 0
  const draw = () => {
    const seconds = (Date.now() - begun) / 1000
    const left = done === 0 ? '' : `, about ${Math.ceil(((all - done) * seconds) / done)} s left`
    terminal.write(`\r${done} of ${all} products (${Math.floor((100 * done) / all)} %)${left}\u001b[K`)
    drawn = Date.now()
  }
  return {
    step() {
      done++
      if (terminal.isTTY && Date.now() - drawn >= EVERY_MS) draw()
    },
    /** Takes the line away again. */
    end() {
      if (terminal.isTTY && drawn > 0) terminal.write('\r\u001b[K')
      drawn = 0
    },
  }
}
