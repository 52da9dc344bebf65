import type { Card, CardMachine } from '../../src/card/card.ts'
import type { DeepBed } from '../../src/card/one-layer.ts'
import { Page } from '../page.tsx'
import { capital } from '../words/capital.ts'
import { FoodScale, NoiseScale } from './grey-scale.tsx'
import { machineLetter, ReadingLists } from './reading-list.tsx'
import { SheetPicture } from './sheet-picture.tsx'

interface Choice {
  readonly value: string
  readonly words: string
}

interface Props {
  readonly title: string
  readonly packed: string
  readonly card: Card
  readonly machines: readonly Choice[]
  readonly chosen: readonly string[]
  readonly points: readonly Choice[]
  readonly placement: string
  /** Thresholds were taught on clean packs. */
  readonly taught: boolean
  /** The food's name, in words. */
  readonly food: string
  /** Marks and numbers on the pictures. */
  readonly marks: boolean
  /** Voltages a person has set, by machine. */
  readonly kV: Readonly<Record<string, number>>
  /** Sizes a person has set, mm, by contaminant. */
  readonly sizesMm: readonly (readonly number[] | null)[]
  /** Runs of the card as a table of test runs. */
  readonly runs: string
  /** The bed hides its own pieces: a single layer of them is shown beside it. Null where it does not. */
  readonly deepBed: DeepBed | null
}

/** Simulated radiographs side by side: found boxed, missed ringed, false alarms shown, counted beneath. */
export function CardPage(props: Props) {
  const { title, packed, card } = props
  return (
    <Page title={`Simulated x-ray pictures: ${title}`} packed={packed} here="card">
      <p class="over-title">Simulated x-ray pictures</p>
      <h1>{title}</h1>
      <p>
        Simulated: a pack drawn by calculation with test pieces on or in it, seen by each machine at its own
        setting and read the way a machine reads it, from the picture alone. Nothing was x-rayed.
      </p>
      <p>
        <strong>Corners</strong> stand around a piece that was found, a <strong>broken ring</strong> around
        one that was missed, a <strong>triangle</strong> around a false alarm. The numbers beside a picture
        are those of the list. A spot lighter than the food is food that is lacking: a light plastic, a bubble
        and a gap look the same, so none of them counts as found.
      </p>
      <Chooser {...props} />
      <ul class="acts">
        <li>
          <a href={`/card?${query(props, (card.seed + 1) % 1_000_000)}`}>Again, with a new pack</a>
        </li>
        <li>
          <a href={`/card?${query(props, card.seed, !props.marks)}`}>
            {props.marks ? 'Marks off' : 'Marks on'}
          </a>
        </li>
        <li>
          <a href={`/card/runs.csv?${query(props)}`}>Runs as CSV</a>
        </li>
        <li>
          <form method="post" action="/runs">
            <input type="hidden" name="b" value={packed} />
            <input type="hidden" name="table" value={props.runs} />
            <button type="submit" class="second">
              Read the runs
            </button>
          </form>
        </li>
      </ul>
      <div class="card-beside">
        <div>
          <Scales card={card} food={props.food} />
          {props.deepBed ? <Layer {...props} bed={props.deepBed} /> : null}
          {card.machines.map((machine, i) => (
            <MachineSection machine={machine} letter={machineLetter(i)} props={props} />
          ))}
        </div>
        <ReadingLists card={card} />
      </div>
      <h2>Mind</h2>
      <ul>
        {card.notes.map((note) => (
          <li>{note}</li>
        ))}
      </ul>
    </Page>
  )
}

/** The address of this card: brief, seed, point, machines and placement. */
function query(
  { packed, card, chosen, placement, taught, kV, sizesMm, marks }: Props,
  seed = card.seed,
  marked = marks,
): string {
  const parts = new URLSearchParams({ b: packed, seed: String(seed), point: String(card.point.index) })
  for (const id of chosen) parts.append('machine', id)
  if (placement) parts.set('placement', placement)
  if (taught) parts.set('taught', 'packs')
  if (!marked) parts.set('marks', 'off')
  for (const [id, value] of Object.entries(kV)) parts.set(`kv-${id}`, String(value))
  sizesMm.forEach((sizes, c) => {
    if (sizes) parts.set(`sizes-${c}`, sizes.join(', '))
  })
  return parts.toString()
}

function Chooser(props: Props) {
  const { packed, card, machines, chosen, points, placement } = props
  return (
    <form method="get" action="/card" class="trade-off-form">
      <input type="hidden" name="b" value={packed} />
      {props.marks ? null : <input type="hidden" name="marks" value="off" />}
      <fieldset class="radios">
        <legend>Machines</legend>
        <div class="ticks">
          {machines.map(({ value, words }) => (
            <label>
              <input type="checkbox" name="machine" value={value} checked={chosen.includes(value)} />
              <span>{words}</span>
            </label>
          ))}
        </div>
      </fieldset>
      <div class="fields">
        <div class="field">
          <label for="card-point">Inspection point</label>
          <select id="card-point" name="point">
            {points.map(({ value, words }) => (
              <option value={value} selected={value === String(card.point.index)}>
                {words}
              </option>
            ))}
          </select>
        </div>
        <div class="field">
          <label for="card-placement">Pieces lie</label>
          <select id="card-placement" name="placement">
            <option value="" selected={placement === ''}>
              as the brief says
            </option>
            <option value="outside" selected={placement === 'outside'}>
              on the pack
            </option>
            <option value="inside" selected={placement === 'inside'}>
              inside the food
            </option>
          </select>
        </div>
        <div class="field">
          <label for="card-taught">Thresholds</label>
          <select id="card-taught" name="taught">
            <option value="" selected={!props.taught}>
              computed
            </option>
            <option value="packs" selected={props.taught}>
              taught on 20 clean packs (slow)
            </option>
          </select>
        </div>
        <div class="field">
          <label for="card-seed">Seed</label>
          <input
            id="card-seed"
            name="seed"
            type="text"
            inputmode="numeric"
            value={String(card.seed)}
            size={7}
          />
        </div>
      </div>
      <Settings {...props} />
      <p>
        <button type="submit">Draw</button>
      </p>
    </form>
  )
}

/** The grey scales, once for the page: machines from above and from the side each have theirs. */
function Scales({ card, food }: { card: Card; food: string }) {
  const scales = new Map<string, NonNullable<CardMachine['scaleMm']>>()
  for (const { scaleMm, seenFrom } of card.machines) if (scaleMm && seenFrom) scales.set(seenFrom, scaleMm)
  return (
    <div class="grey-scales">
      {[...scales].map(([from, { white, black }]) => (
        <FoodScale whiteMm={white} blackMm={black} food={food} from={scales.size > 1 ? `from ${from}` : ''} />
      ))}
      {scales.size > 0 ? <NoiseScale {...card.noiseScale} /> : null}
    </div>
  )
}

/** What lies in a deep bed: its pieces spread out in one layer. */
function Layer({ packed, card, food, bed }: Props & { bed: DeepBed }) {
  const of = new URLSearchParams({ b: packed, point: String(card.point.index), seed: String(card.seed) })
  return (
    <figure class="one-layer">
      <img src={`/card/layer.png?${of}`} alt={`${food} in one layer, drawn`} loading="lazy" />
      <figcaption>
        {`${capital(food)}, in one layer (drawn, enlarged). In the pictures below they lie ${Math.round(bed.layers)} deep and hide one another.`}
      </figcaption>
    </figure>
  )
}

/** What a person may set for the picture: tube voltages and the sizes on the card; empty: as the tool chose. */
function Settings({ card, kV, sizesMm }: Props) {
  const set = Object.keys(kV).length > 0 || sizesMm.some((sizes) => sizes !== null)
  return (
    <details class="fold" {...(set ? { open: true } : {})}>
      <summary>Tube voltages and sizes on the card</summary>
      <div class="fields">
        {card.machines.map(({ equipment, label, kV: used }) => (
          <div class="field">
            <label for={`card-kv-${equipment}`}>{`Tube voltage in kV, ${label}`}</label>
            <input
              id={`card-kv-${equipment}`}
              name={`kv-${equipment}`}
              type="text"
              inputmode="decimal"
              value={kV[equipment] === undefined ? '' : String(kV[equipment])}
              placeholder={used === null ? '' : String(used)}
              size={6}
            />
          </div>
        ))}
        {card.rows.map(({ words, sizesMm: used }, c) => (
          <div class="field">
            <label for={`card-sizes-${c}`}>{`Sizes in mm, ${words}`}</label>
            <input
              id={`card-sizes-${c}`}
              name={`sizes-${c}`}
              type="text"
              value={sizesMm[c]?.join(', ') ?? ''}
              placeholder={used.join(', ')}
              size={24}
            />
          </div>
        ))}
      </div>
      <p class="small">
        Empty fields stay as the tool chose them; the current follows from the voltage and the power of the
        tube.
      </p>
    </details>
  )
}

function MachineSection({ machine, letter, props }: { machine: CardMachine; letter: string; props: Props }) {
  const id = `card-${machine.equipment}`
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{`${letter} · ${machine.label}`}</h2>
      {machine.leftOut ? (
        <p>Not run: {machine.leftOut}.</p>
      ) : (
        <p>
          {`${machine.kV} kV, ${machine.mA?.toFixed(1)} mA, pixel ${machine.objectPixelMm?.toFixed(2)} mm at the pack: found ${machine.found} of ${machine.pieces} pieces, false alarms ${machine.falseAlarms}.`}
          {foodOffWords(machine)}
        </p>
      )}
      <div class="radiographs">
        {machine.pictures.map((picture) => {
          const sheet = machine.sheets[picture.sheet]!
          const href = pictureAddress(props, picture.name)
          return (
            <figure>
              <SheetPicture sheet={sheet} href={href} alt={picture.alt} marks={props.marks} />
              <figcaption>{`${picture.kind}, pack ${picture.sheet + 1} (simulated)`}</figcaption>
            </figure>
          )
        })}
      </div>
      {machine.pictures.length > 0 ? <Enlarged machine={machine} props={props} /> : null}
    </section>
  )
}

function pictureAddress(props: Props, name: string): string {
  return `/card/picture.png?${query(props)}&picture=${encodeURIComponent(name)}`
}

/** Room around the pieces in the enlargement, mm. */
const AROUND_MM = 4

/** The lines of the first pack, enlarged, folded away until asked for. */
function Enlarged({ machine, props }: { machine: CardMachine; props: Props }) {
  const sheet = machine.sheets[0]!
  const [plain] = machine.pictures
  const left = Math.min(...sheet.pieces.map((p) => p.u - p.halfU)) - AROUND_MM
  const right = Math.max(...sheet.pieces.map((p) => p.u + p.halfU)) + AROUND_MM
  const parts = sheet.lines.map(({ from, to }) => {
    const line = sheet.pieces.filter((p) => p.number >= from && p.number <= to)
    const tallest = Math.max(...line.map((p) => p.halfV))
    const top = Math.min(...line.map((p) => p.v)) - tallest - AROUND_MM
    return { leftMm: left, topMm: top, widthMm: right - left, heightMm: 2 * (tallest + AROUND_MM) }
  })
  return (
    <details class="fold">
      <summary>The pieces of pack 1, enlarged line by line</summary>
      {sheet.lines.map(({ from, to }, i) => (
        <figure class="enlarged">
          <SheetPicture
            sheet={{ ...sheet, lines: sheet.lines.filter((line) => line.from === from) }}
            href={pictureAddress(props, plain!.name)}
            alt={`Pieces ${from} to ${to}, enlarged`}
            part={parts[i]!}
            marks={props.marks}
          />
          <figcaption>{`${sheet.pieces.find((p) => p.number === from)!.words}: ${sheet.pieces
            .filter((p) => p.number >= from && p.number <= to)
            .map((p) => p.sizeMm)
            .join(', ')} mm`}</figcaption>
        </figure>
      ))}
    </details>
  )
}

/** Gains between these count as no difference (judgement). */
const [HARMS_BELOW, HELPS_ABOVE] = [0.85, 1.2] as const

/** Whether taking the food off helped, with the figure measured on this card. */
function foodOffWords({ foodTakenOffGain: gain }: CardMachine): string {
  if (gain === null) return ''
  const times = `${gain.toFixed(gain < 1.95 ? 1 : 0)} times`
  if (gain > HELPS_ABOVE)
    return ` Taking the food off helps here: the pieces stand out ${times} as far as in the plain picture, because it is the food, not the beam's own noise, that hides them.`
  if (gain < HARMS_BELOW)
    return ` Taking the food off harms here: the pieces stand out ${times} as far as in the plain picture. This food is even enough, and the difference of two energies carries the noise of both; the machine reads both pictures together.`
  return ` Taking the food off changes little here: the pieces stand out ${times} as far as in the plain picture.`
}
