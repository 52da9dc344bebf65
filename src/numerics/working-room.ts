/** Room for so many numbers, the same with every call; what was left in it is still there. */
export function roomFor(): (length: number) => Float64Array<ArrayBuffer> {
  let room = new Float64Array(0)
  return (length) => {
    if (room.length < length) room = new Float64Array(length)
    return room
  }
}
