/** The benchmark product: one inspection point, two machines, three contaminants; each row another height and speed. */
export const FOODS = ['cheddar', 'hazelnut'] as const

const HEADING =
  'title,food,heightMm,widthMm,lengthMm,speedMPerMin,equipment,contaminants.0.material,contaminants.0.mustFindMm,contaminants.1.material,contaminants.1.mustFindMm,contaminants.2.material,contaminants.2.mustFindMm'

/** A table of so many rows, no two alike; a full line-up where no machine is named. */
export function* manyProducts(rows: number, foods: readonly string[], equipment = 'xray-single coil-single') {
  yield `${HEADING}\n`
  for (let k = 0; k < rows; k++) {
    const food = foods[k % foods.length]
    const heightMm = (20 + ((k * 7) % 41) + ((k * 13) % 1000) / 1000).toFixed(3)
    yield `product ${k},${food},${heightMm},120,160,${20 + (k % 31)},${equipment},quartz,3,ss316,1.5,glass_container,3\n`
  }
}
