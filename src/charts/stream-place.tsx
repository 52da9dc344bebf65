interface Props {
  readonly id: string
  readonly title: string
  /** How the food runs: on a belt, through a pipe, or falling. */
  readonly runs: 'belt' | 'pipe' | 'fall'
}

const arrowTo = (x: number, y: number, dx: number, dy: number) =>
  `M${x - dx} ${y - dy}L${x} ${y}M${x - 5} ${y - 5 * Math.sign(dy)}L${x} ${y}L${x + 5} ${y - 5 * Math.sign(dy)}`

/** Where a test piece goes into a stream of food ahead of the unit, and where it is caught behind it; not to scale. */
export function StreamPlace({ id, title, runs }: Props) {
  return (
    <svg
      class="pack-places"
      role="img"
      aria-labelledby={`${id}-title`}
      viewBox={runs === 'fall' ? '0 0 380 190' : '0 0 380 130'}
    >
      <title id={`${id}-title`}>{title}</title>
      {runs === 'fall' ? <Falling /> : <Running isBelt={runs === 'belt'} />}
    </svg>
  )
}

function Running({ isBelt }: { isBelt: boolean }) {
  return (
    <>
      <rect class="pack" x="150" y="30" width="70" height="66" />
      <text x="185" y="22" text-anchor="middle">
        unit
      </text>
      <rect class="pack" x="2" y="50" width="360" height="28" />
      {isBelt ? <path class="travel" d="M2 84h360" /> : null}
      <text x="60" y="22" text-anchor="middle">
        piece goes in
      </text>
      <path class="travel" d={arrowTo(60, 52, 0, 22)} />
      <Piece x={60} y={64} />
      <path class="travel" d={arrowTo(300, 110, 0, 30)} />
      <text x="300" y="124" text-anchor="middle">
        piece is caught
      </text>
      <path class="travel" d="M2 106h90m-7 -5l7 5l-7 5" />
      <text x="100" y="110">
        travel
      </text>
    </>
  )
}

function Falling() {
  return (
    <>
      <rect class="pack" x="80" y="72" width="70" height="50" />
      <text x="160" y="101">
        unit
      </text>
      <rect class="pack" x="100" y="2" width="30" height="184" />
      <path class="travel" d="M156 30h-40m7 -5l-7 5l7 5" />
      <text x="162" y="34">
        piece goes in
      </text>
      <Piece x={115} y={30} />
      <path class="travel" d="M130 148h40m-7 -5l7 5l-7 5" />
      <text x="176" y="152">
        piece is caught
      </text>
      <path class="travel" d={arrowTo(40, 110, 0, 80)} />
      <text x="40" y="126" text-anchor="middle">
        fall
      </text>
    </>
  )
}

const Piece = ({ x, y }: { x: number; y: number }) => (
  <g class="place-mark">
    <circle cx={x} cy={y} r="9" />
    <text x={x} y={y + 4} text-anchor="middle">
      1
    </text>
  </g>
)
