import { CONTAINERS, type Container } from './container-shapes.ts'
import { spreadLabels } from './spread-labels.ts'

export interface DrawnZone {
  readonly name: string
  readonly state: 'findable' | 'degraded' | 'blind'
  /** Beside the name, e.g. "worse". */
  readonly words: string
}

interface Props {
  readonly id: string
  readonly title: string
  readonly description: string
  readonly container: Container
  /** True where the beam comes from above; else it is looked along. */
  readonly fromAbove: boolean
  /** Draws a level beam from the left: the container is then cut open along it. */
  readonly levelBeam?: boolean
  readonly zones: readonly DrawnZone[]
}

const WIDE = 460
const HIGH = 240
const NAMES_AT = 244
const APART = 24
const FILLS = { findable: 'none', degraded: 'slanted', blind: 'solid' } as const

/** A container with its zones: blank where a piece is found as in the middle, slanted where worse, solid where hidden. */
export function ContainerZones(props: Props) {
  const { id, title, description, container, fromAbove, levelBeam = false, zones } = props
  const { outline, zones: shapes } = CONTAINERS[container]
  const drawn = zones.flatMap((zone) => {
    const shape = shapes[zone.name]
    return shape ? [{ ...zone, shape }] : []
  })
  const places = spreadLabels(
    drawn.map(({ shape }) => shape.at[1]),
    APART,
    26,
    HIGH - 12,
  )
  return (
    <svg
      class="pattern-bars container-zones"
      role="img"
      aria-labelledby={`${id}-title ${id}-desc`}
      viewBox={`0 0 ${WIDE} ${HIGH}`}
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-desc`}>{description}</desc>
      <defs>
        <pattern id={`${id}-slanted`} width="6" height="6" patternUnits="userSpaceOnUse">
          <path d="M0 6L6 0" class="hatch slanted" />
        </pattern>
        <pattern id={`${id}-solid`} width="8" height="8" patternUnits="userSpaceOnUse">
          <path d="M0 0H8V8H0Z" class="hatch solid" />
        </pattern>
      </defs>
      <path class="container" d={outline} />
      {drawn.map(({ state, shape }) => (
        <path class="part" d={shape.d} fill={state === 'findable' ? 'none' : `url(#${id}-${FILLS[state]})`} />
      ))}
      {fromAbove ? <BeamFromAbove /> : null}
      {levelBeam ? <LevelBeam /> : null}
      {drawn.map(({ name, words, shape: { at } }, row) => (
        <>
          <path class="leader" d={`M${at[0]} ${at[1]}L${NAMES_AT - 20} ${places[row]}H${NAMES_AT - 5}`} />
          <circle class="leader-end" cx={at[0]} cy={at[1]} r="3" />
          <text x={NAMES_AT} y={(places[row] ?? 0) + 5}>
            <tspan class="zone-name">{name}</tspan>
            {words ? `: ${words}` : ''}
          </text>
        </>
      ))}
    </svg>
  )
}

function BeamFromAbove() {
  return (
    <g class="beam">
      <path d="M24 20V60M18 50L24 62L30 50" />
      <text x="24" y="80" text-anchor="middle">
        beam
      </text>
    </g>
  )
}

function LevelBeam() {
  return (
    <g class="beam">
      <path d="M2 130H40M30 124L42 130L30 136" />
      <text x="0" y="114">
        beam
      </text>
    </g>
  )
}
