/** The grey scale of the plain pictures: from white to black in millimetres of solid food. */
export function FoodScale(props: {
  whiteMm: number
  blackMm: number
  food: string
  /** "from above" where a page has more than one scale. */
  from: string
}) {
  const { whiteMm, blackMm, food, from } = props
  return (
    <figure class="grey-scale">
      <Bar left={`${Math.round(whiteMm)} mm or less`} right={`${Math.round(blackMm)} mm or more`} />
      <figcaption>{`Plain pictures${from ? ` ${from}` : ''}, one scale for all machines: lets through as much as so much solid ${food}`}</figcaption>
    </figure>
  )
}

/** The grey scale of the pictures with the food taken off. */
export function NoiseScale({ white, black }: { white: number; black: number }) {
  return (
    <figure class="grey-scale">
      <Bar left={`${Math.abs(white)} noise widths lighter`} right={`${black} denser than the food around`} />
      <figcaption>Food or background taken off: each picture in widths of its own noise</figcaption>
    </figure>
  )
}

function Bar({ left, right }: { left: string; right: string }) {
  return (
    <svg viewBox="0 0 320 34" role="img" aria-label={`white: ${left}; black: ${right}`}>
      {Array.from({ length: 16 }, (_, i) => {
        const grey = Math.round(255 * (1 - i / 15))
        return <rect x={i * 20} y="0" width="20.5" height="14" fill={`rgb(${grey},${grey},${grey})`} />
      })}
      <rect x="0.5" y="0.5" width="319" height="13" class="bar-edge" />
      <text x="0" y="29">
        {left}
      </text>
      <text x="320" y="29" text-anchor="end">
        {right}
      </text>
    </svg>
  )
}
