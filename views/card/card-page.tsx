import type { Card, CardMachine } from '../../src/card/card.ts'
import { Page } from '../page.tsx'

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
  /** Voltages a person has set, by machine. */
  readonly kV: Readonly<Record<string, number>>
  /** Sizes a person has set, mm, by contaminant. */
  readonly sizesMm: readonly (readonly number[] | null)[]
}

/** Simulated radiographs side by side: found boxed, missed ringed, false alarms shown, counted beneath. */
export function CardPage(props: Props) {
  const { title, packed, card } = props
  return (
    <Page title={`Test card: ${title}`} packed={packed} here="card">
      <p class="over-title">Test card</p>
      <h1>{title}</h1>
      <p>
        Simulated: a pack drawn by calculation with test pieces on or in it, seen by each machine at its own
        setting and read the way a machine reads it, from the picture alone. Nothing was x-rayed.
      </p>
      <p>
        In the pictures a <strong>box</strong> is a piece that was found, a <strong>ring</strong> one that was
        missed, a <strong>triangle</strong> a false alarm. Sizes are printed beside the pieces, in mm.
      </p>
      <Chooser {...props} />
      <ul class="acts">
        <li>
          <a href={`/card?${query(props, (card.seed + 1) % 1_000_000)}`}>Again, with a new pack</a>
        </li>
        <li>
          <a href={`/card/runs.csv?${query(props)}`}>Runs as CSV</a>
        </li>
      </ul>
      {card.machines.map((machine) => (
        <MachineSection machine={machine} props={props} />
      ))}
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
function query({ packed, card, chosen, placement, kV, sizesMm }: Props, seed = card.seed): string {
  const parts = new URLSearchParams({ b: packed, seed: String(seed), point: String(card.point.index) })
  for (const id of chosen) parts.append('machine', id)
  if (placement) parts.set('placement', placement)
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

function MachineSection({ machine, props }: { machine: CardMachine; props: Props }) {
  const id = `card-${machine.equipment}`
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{machine.label}</h2>
      {machine.leftOut ? (
        <p>Not run: {machine.leftOut}.</p>
      ) : (
        <p>
          {`${machine.kV} kV, ${machine.mA?.toFixed(1)} mA, pixel ${machine.objectPixelMm?.toFixed(2)} mm at the pack: found ${machine.found} of ${machine.pieces} pieces, false alarms ${machine.falseAlarms}.`}
        </p>
      )}
      <div class="radiographs">
        {machine.pictures.map((picture) => (
          <figure>
            <img
              src={`/card/picture.png?${query(props)}&picture=${encodeURIComponent(picture.name)}`}
              alt={picture.alt}
              width={picture.widthPx}
              height={picture.heightPx}
              loading="lazy"
            />
            <figcaption>{`${picture.kind}, pack ${picture.sheet + 1} (simulated)`}</figcaption>
          </figure>
        ))}
      </div>
      {machine.runs.length > 0 ? <Readings machine={machine} /> : null}
    </section>
  )
}

function Readings({ machine }: { machine: CardMachine }) {
  const caption = `readings-${machine.equipment}`
  return (
    <details>
      <summary>Readings of this machine</summary>
      <section class="scroll" tabindex={0} aria-labelledby={caption}>
        <table class="numbers">
          <caption id={caption}>Pieces found in {machine.runs[0]?.runs ?? 1} run of each</caption>
          <thead>
            <tr>
              <th scope="col">Piece</th>
              <th scope="col" class="n">
                Size, mm
              </th>
              <th scope="col" class="n">
                Found
              </th>
              <th scope="col" class="n">
                Strongest answer, noise widths
              </th>
            </tr>
          </thead>
          <tbody>
            {machine.runs.map((run) => (
              <tr>
                <th scope="row">{run.piece}</th>
                <td class="n">{run.sizeMm ?? '–'}</td>
                <td class="n">{`${run.found} of ${run.runs}`}</td>
                <td class="n">{run.signal === null ? '–' : run.signal.toFixed(1)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  )
}
