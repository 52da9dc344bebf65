import { Choose, Measure } from './field.tsx'
import { Fold } from './fold.tsx'
import { ListError } from './row-buttons.tsx'
import type { Sheet } from './sheet.ts'

const COMPOSITION = ['waterPct', 'proteinPct', 'fatPct', 'carbohydratePct', 'ashPct']
const LESS_ASKED = ['densityGPerCm3', 'packing', 'unevennessMm', 'ironMgPerKg', 'conductivitySPerM']

const CHOICES: readonly (readonly [key: string, empty: string])[] = [
  ['structure', 'As usual for the food'],
  ['voidFree', 'Not stated'],
  ['stiff', 'As usual for the food'],
  ['boneIn', 'Not stated'],
]

/** The food. `prefix` is "product" for the brief, "points.0.product" for what differs at a point. */
export function ProductFields({ sheet, prefix, empty }: { sheet: Sheet; prefix: string; empty: string }) {
  const at = (key: string) => `${prefix}.${key}`
  const foods = [
    { words: 'Not in the list', options: [{ value: 'custom', words: 'Own composition' }] },
    ...sheet.foods,
  ]
  return (
    <>
      <div class="fields tight">
        <Choose sheet={sheet} path={at('food')} groups={foods} empty={empty} />
        <Measure sheet={sheet} path={at('grainMm')} />
        <Measure sheet={sheet} path={at('temperatureC')} />
        <Measure sheet={sheet} path={at('saltPct')} />
      </div>
      <Fold
        sheet={sheet}
        paths={[
          at('composition'),
          `${prefix}.composition.`,
          ...CHOICES.map(([key]) => at(key)),
          ...LESS_ASKED.map(at),
        ]}
        summary="More: structure, composition, density, fill fraction, unevenness, conductivity"
        id={at('composition')}
      >
        {CHOICES.map(([key, empty]) => (
          <Choose sheet={sheet} path={at(key)} empty={empty} />
        ))}
        {prefix === 'product' ? (
          <Choose sheet={sheet} path="product.foodClass" empty="As the list says" />
        ) : null}
        {LESS_ASKED.map((key) => (
          <Measure sheet={sheet} path={at(key)} />
        ))}
        <fieldset class="sub wide">
          <legend>Composition, per 100 g</legend>
          <ListError sheet={sheet} list={at('composition')} />
          <div class="fields tight">
            {COMPOSITION.map((key) => (
              <Measure sheet={sheet} path={at(`composition.${key}`)} />
            ))}
          </div>
        </fieldset>
      </Fold>
    </>
  )
}

export function ProductGroup({ sheet }: { sheet: Sheet }) {
  return (
    <fieldset class="group" id="product">
      <legend>
        <h2>Product</h2>
      </legend>
      <ProductFields sheet={sheet} prefix="product" empty="Choose a food" />
    </fieldset>
  )
}
