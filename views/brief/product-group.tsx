import { Choose, Measure } from './field.tsx'
import { Fold } from './fold.tsx'
import { ListError } from './row-buttons.tsx'
import type { Sheet } from './sheet.ts'

const COMPOSITION = ['waterPct', 'proteinPct', 'fatPct', 'carbohydratePct', 'ashPct']
const LESS_ASKED = ['densityGPerCm3', 'packing', 'unevennessMm', 'ironMgPerKg', 'conductivitySPerM']

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
        <Choose sheet={sheet} path={at('structure')} empty="As usual for the food" />
        <Measure sheet={sheet} path={at('grainMm')} />
        <Measure sheet={sheet} path={at('temperatureC')} />
        <Measure sheet={sheet} path={at('saltPct')} />
        <Choose sheet={sheet} path={at('voidFree')} empty="Not stated" />
        <Choose sheet={sheet} path={at('stiff')} empty="As usual for the food" />
        <Choose sheet={sheet} path={at('boneIn')} empty="Not stated" />
        {prefix === 'product' ? (
          <Choose sheet={sheet} path="product.foodClass" empty="As the list says" />
        ) : null}
      </div>
      <Fold
        sheet={sheet}
        paths={[at('composition'), `${prefix}.composition.`]}
        summary="Composition, per 100 g"
        id={at('composition')}
      >
        <ListError sheet={sheet} list={at('composition')} />
        {COMPOSITION.map((key) => (
          <Measure sheet={sheet} path={at(`composition.${key}`)} />
        ))}
      </Fold>
      <Fold
        sheet={sheet}
        paths={LESS_ASKED.map(at)}
        summary="Density, fill fraction, unevenness, iron, conductivity"
      >
        {LESS_ASKED.map((key) => (
          <Measure sheet={sheet} path={at(key)} />
        ))}
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
