/** A piece at an angle to the travel between the three loops of a metal detector, seen from above. */
export function TurnedSketch({ id, angleDeg, words }: { id: string; angleDeg: number; words: string }) {
  const angle = (angleDeg * Math.PI) / 180
  const reach = 34
  const dx = reach * Math.cos(angle)
  const dy = reach * Math.sin(angle)
  const at = (value: number) => value.toFixed(1)
  return (
    <svg class="plane sketch" role="img" aria-labelledby={`${id}-title`} viewBox="0 0 260 110">
      <title id={`${id}-title`}>{words}</title>
      <g class="grid">
        {[60, 130, 200].map((x) => (
          <line x1={x} x2={x} y1="8" y2="92" />
        ))}
      </g>
      <path class="curve thin" d="M14 100H246M240 96L246 100L240 104" />
      <text x="14" y="94">
        travel
      </text>
      <line class="piece" x1={at(130 - dx)} y1={at(50 + dy)} x2={at(130 + dx)} y2={at(50 - dy)} />
    </svg>
  )
}
