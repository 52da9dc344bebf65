import { describe, expect, it } from 'vitest'
import { elements, materials, sources } from '../../src/reference/index.ts'

const all = [...materials.values()]
const foods = all.flatMap((m) => (m.food ? [{ ...m, food: m.food }] : []))

/** Ids other parts of the program, briefs in the field and older files rely on. */
const KEPT =
  `glass_container glass_float glass_plate_nist glass_borosilicate glass_crystal_leadfree quartz granite basalt
  limestone_pure limestone_avg sandstone shale bone_cortical bone_hard bone_poultry bone_poultry_soft bone_fish
  cartilage pe pp pet pvc ptfe nylon pc abs ps pmma pom silicone nr rubber_filled silicone_filled wood nut_shell
  insect ss304 ss316 steel brass aluminium copper lead solder_snag solder_snpb titanium ceramic alumina gos csi
  cdte cdwo4 almond hazelnut walnut cashew peanut raisin cranberry_dried blueberry_frozen strawberry_frozen bread
  cheddar mozzarella_shred beef_mince chicken_breast cod salmon corn_frozen beans_frozen broccoli_frozen potato
  fries_frozen rice flour milk_powder sugar chocolate yoghurt jam soup ready_meal pasta oats butter peanut_butter
  applesauce olive prune honey instant_coffee water carton aluminium_foil metallised_film ss430 ferrite carbide
  polyurethane`.split(/\s+/)

describe('materials', () => {
  it('keeps every id that briefs use', () => {
    expect(KEPT.filter((id) => !materials.has(id))).toEqual([])
    expect(new Set(all.map((m) => m.id)).size).toBe(all.length)
    expect(new Set(all.map((m) => m.label)).size).toBe(all.length)
  })

  it.each(all)('$id is whole: fractions, density, source, family', (m) => {
    const sum = Object.values(m.massFractions).reduce((a, b) => a + b, 0)
    expect(Math.abs(sum - 1)).toBeLessThan(2e-3)
    for (const [symbol, w] of Object.entries(m.massFractions)) {
      expect(elements.has(symbol), symbol).toBe(true)
      expect(w).toBeGreaterThan(0)
    }
    expect(m.densityGPerCm3).toBeGreaterThan(0)
    if (m.densityRange) {
      expect(m.densityRange[0]).toBeLessThanOrEqual(m.densityGPerCm3)
      expect(m.densityRange[1]).toBeGreaterThanOrEqual(m.densityGPerCm3)
    }
    expect(sources.has(m.source), m.source).toBe(true)
    expect(m.family).toContain(m.id)
    expect(new Set(m.family).size).toBe(m.family.length)
    for (const id of m.family) expect(materials.get(id)?.kind, `${m.id} may be ${id}`).toBe(m.kind)
    expect(m.food !== null).toBe(m.kind === 'food')
  })

  it('leaves a word that names no kind open to others, and a named metal not', () => {
    expect(materials.get('stone_any')?.family.length).toBeGreaterThan(3)
    expect(materials.get('ss316')?.family).toEqual(['ss316'])
  })
})

describe('foods', () => {
  it.each(foods)('$id: nutrients, packing and grain hang together', ({ food, densityGPerCm3, mark }) => {
    if (food.proximate) {
      const { waterPct, proteinPct, fatPct, carbohydratePct, ashPct, fibrePct } = food.proximate
      const total = waterPct + proteinPct + fatPct + carbohydratePct + ashPct
      // Coffee carries other substances that the nutrient table does not divide.
      expect(total).toBeGreaterThan(98.5)
      expect(total).toBeLessThan(101)
      expect(fibrePct).toBeLessThanOrEqual(carbohydratePct)
    }
    expect(food.packing).toBeGreaterThan(0)
    expect(food.packing).toBeLessThanOrEqual(1)
    // Bread's bulk density is that of the sliced loaf; the others follow from the packing.
    expect(Math.abs(food.bulkDensityGPerCm3 / (densityGPerCm3 * food.packing) - 1)).toBeLessThan(0.06)
    if (['granular', 'powder', 'plates'].includes(food.structure)) {
      expect(food.grainMm).toBeGreaterThan(0)
      expect(food.packing).toBeLessThan(0.8)
    } else {
      expect(food.packing).toBe(1)
    }
    expect(food.unevennessMm).toBeGreaterThan(0)
    expect(food.voidFree).toBe(false)
    expect(['V', 'C', 'M']).toContain(mark)
  })
})
