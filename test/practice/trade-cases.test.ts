import { describe, expect, it } from 'vitest'
import { TRADE } from './briefs/trade.ts'
import { look } from './look.ts'

/**
 * What somebody with twenty years on these lines would say. Common practice, no source: briefs and judgements are our
 * own, from memory. Where program and trade still disagree the case stands as `it.fails`, so that it speaks up once
 * they agree.
 */
describe('frozen blocks', () => {
  const { option, finding, general, rules } = look(TRADE.frozenBlock)
  it('are taken by an x-ray machine built for blocks', () => {
    expect(option('xray-single').verdict).not.toBe('not-suitable')
    expect(option('xray-single').verdict).not.toBe('no-build')
  })
  it('are inspected straight from the freezer', () => {
    expect(rules('coil-single')).toContain('straight-from-the-freezer')
  })
  it('show steel to x-rays', () => expect(finding('xray-single', 'steel').expectedMm).not.toBeNull())
  it('are under the meat law of the US, not under the FDA', () => {
    expect(general()).toEqual(expect.arrayContaining(['us-meat-haccp', 'us-meat-adulterated-at-any-size']))
    for (const id of ['us-preventive-controls', 'us-criterion-is-a-length'])
      expect(general()).not.toContain(id)
  })
  it('keep the limits of separated meat out of the sizes', () =>
    expect(general()).toContain('us-bone-particle-limits'))
})

describe('flour', () => {
  const sack = look(TRADE.flourSack)
  const sifted = look(TRADE.siftedFlour)
  it('in a sack is taken by an x-ray machine built for cases', () =>
    expect(['not-suitable', 'no-build']).not.toContain(sack.verdict('xray-single')))
  it('in a sack gives a metal detector no signal of its own', () =>
    expect(sack.rules('coil-single')).toContain('dry-suits-coil'))
  it('leaves stones to the sieve that is declared', () =>
    expect(sifted.keptOut('stone_any')).toContain('the-sieve-in-place-stops-it'))
  it('does not trust a mesh with its own wire', () => {
    expect(sifted.keptOut('ss304')).toContain('a-mesh-does-not-catch-its-own-wire')
    expect(sifted.keptOut('ss304')).not.toContain('the-sieve-in-place-stops-it')
  })
  it('may explode', () => expect(sifted.general()).toContain('dust-may-explode'))
  it('is proved below the fall', () =>
    expect(sifted.rules('coil-free-fall')).toContain('prove-every-link-in-the-fall'))
})

describe('sugar behind a magnet', () => {
  const { keptOut } = look(TRADE.magnetInPlace)
  it('asks to look after the magnet that is there', () => {
    expect(keptOut('steel')).toContain('look-after-the-magnet-in-place')
    expect(keptOut('steel')).not.toContain('a-magnet-where-it-is-loose')
  })
  it('offers no magnet for 316 or lead', () => {
    expect(keptOut('ss316')).toContain('no-magnet-holds-it')
    expect(keptOut('lead')).toEqual(['shot-comes-with-the-raw-material'])
  })
})

describe('infant formula', () => {
  const { general, finding } = look(TRADE.infantFormula)
  it('is for infants: small pieces count', () => expect(general()).toContain('special-consumers'))
  it('is dry: iron of 1 mm and 316 of 1.5 mm are found in the fall', () => {
    for (const metal of ['steel', 'ss316']) expect(finding('coil-free-fall', metal).meets).toBe('yes')
  })
  it('never argues a ball from a length', () => expect(general()).toContain('us-criterion-is-a-length'))
})

describe('food in a pipe', () => {
  const chicken = look(TRADE.chickenPipe)
  const juice = look(TRADE.juicePipe)
  it('is seen by x-rays on the pipe: metal and bone in ground chicken', () => {
    expect(chicken.finding('xray-pipe', 'ss316').meets).toBe('yes')
    expect(['not-suitable', 'no-build']).not.toContain(chicken.verdict('xray-pipe'))
  })
  it('is better heard with several frequencies', () =>
    expect(chicken.finding('coil-pipe-multi', 'ss316').expectedMm).toBeLessThan(
      chicken.finding('coil-pipe', 'ss316').expectedMm!,
    ))
  it('is diverted, and every link of the diverter proved', () =>
    expect(chicken.rules('coil-pipe')).toEqual(
      expect.arrayContaining(['diverter-in-the-pipe', 'prove-every-link-in-the-pipe']),
    ))
  it('warns of pressure, not of belts', () => {
    expect(chicken.general()).toContain('pressure-in-the-pipe')
    expect(chicken.general()).not.toContain('moving-machinery')
  })
  it('as juice has a law of its own', () => {
    expect(juice.general()).toContain('us-juice-haccp')
    expect(juice.general()).not.toContain('us-preventive-controls')
  })
  it('as juice lets iron of 1.5 mm be found', () =>
    expect(['yes', 'maybe']).toContain(juice.finding('coil-pipe-multi', 'steel').meets))
})

describe('poultry', () => {
  const wings = look(TRADE.wings)
  const fillets = look(TRADE.fillets)
  it('with its bones is promised no bone', () => {
    expect(wings.finding('xray-single', 'bone_poultry')).toMatchObject({ meets: 'cannot', cautiousMm: null })
    expect(wings.keptOut('bone_poultry')).toContain('bone-in-food-is-a-matter-of-the-cut')
  })
  it('with its bones still has its steel and glass found', () => {
    expect(wings.finding('xray-single', 'ss316').meets).toBe('yes')
    expect(wings.verdict('xray-single')).toBe('conditional')
  })
  it('that says boneless makes a bone a defect', () => {
    expect(fillets.general()).toEqual(expect.arrayContaining(['label-says-removed', 'untrue-claim-misleads']))
    expect(fillets.finding('xray-dual', 'bone_poultry').meets).not.toBe('cannot')
  })
})

describe('bread', () => {
  const clip = look(TRADE.loafClip)
  const plastic = look(TRADE.loafPlasticClip)
  const tie = look(TRADE.loafTie)
  it('with a metal clip is inspected before the clip', () =>
    expect(clip.blocks('coil-single')).toEqual(['coil-before-the-insert']))
  it('with a plastic clip is inspected in the bag', () => expect(plastic.blocks('coil-single')).toEqual([]))
  it('with a twist tie waits for the answer whether it holds wire', () => {
    expect(tie.verdict('coil-single')).toBe('conditional')
    expect(tie.rules('coil-single')).toContain('say-whether-it-is-metal')
    expect(plastic.rules('coil-single')).not.toContain('say-whether-it-is-metal')
  })
})

describe('metal that belongs in the pack', () => {
  const toy = look(TRADE.toy)
  const radio = look(TRADE.radioLabel)
  const jerky = look(TRADE.jerky)
  const tea = look(TRADE.teaBags)
  it('is metal whatever else the name says', () =>
    expect(toy.blocks('coil-single')).toEqual(['coil-before-the-insert']))
  it('is the aerial of a radio label', () =>
    expect(radio.blocks('coil-multi')).toEqual(['coil-before-the-insert']))
  it('is the iron of an absorber, to every magnetic method', () => {
    expect(jerky.blocks('coil-multi')).toEqual(['coil-before-the-insert'])
    expect(jerky.verdict('static-field')).toBe('not-suitable')
    expect(jerky.rules('xray-single')).toContain('inserts-look-foreign')
  })
  it('is the staple of a tea bag', () => expect(tea.verdict('coil-single')).toBe('not-suitable'))
  it('says of a machine that is ruled out only what rules it out', () =>
    expect(toy.option('coil-single').reasons.map(({ rule }) => rule)).toEqual(['coil-before-the-insert']))
})

describe('foil and cans', () => {
  const sweets = look(TRADE.foilSweets)
  const fish = look(TRADE.sardines)
  it('leave sweets in foil to x-rays', () => {
    expect(sweets.verdict('xray-single')).toBe('best-fit')
    expect(sweets.blocks('coil-single')).toEqual(['foil-closes-coil'])
  })
  it('leave a magnetised-iron detector iron only', () =>
    expect(sweets.finding('static-field', 'ss316').meets).toBe('cannot'))
  it('close a can of fish to coils and open it to x-rays from above', () => {
    expect(fish.verdict('coil-single')).toBe('not-suitable')
    expect(fish.finding('xray-single', 'ss316').meets).not.toBe('cannot')
  })
  it('put fish under the seafood law', () => {
    expect(fish.general()).toEqual(expect.arrayContaining(['us-fish-haccp', 'us-fish-metal-guide']))
    expect(fish.general()).not.toContain('us-preventive-controls')
  })
})

describe('leaf salad', () => {
  const { finding, keptOut } = look(TRADE.salad)
  it('shows stones to x-rays, insects and wood to nothing that may be promised', () => {
    expect(finding('xray-single', 'stone_any').meets).toBe('yes')
    expect(finding('xray-single', 'insect').meets).not.toBe('yes')
    expect(keptOut('insect')).toContain('keep-insects-out')
  })
})

describe('pet food', () => {
  const { general, verdict } = look(TRADE.kibble)
  it('has its own law and no injury guide for people', () => {
    expect(general()).toEqual(expect.arrayContaining(['us-animal-food', 'us-animal-food-x-rays']))
    expect(general()).not.toContain('us-criterion-is-a-length')
  })
  it('in a sack of 130 mm is a case for both families', () => {
    for (const id of ['xray-single', 'coil-single']) expect(verdict(id)).not.toBe('not-suitable')
  })
})

describe('cold and frozen', () => {
  const ice = look(TRADE.iceCream)
  const meal = look(TRADE.tray)
  it('ice cream shows steel and hides nut shell', () => {
    expect(['yes', 'maybe']).toContain(ice.finding('xray-single', 'steel').meets)
    expect(ice.finding('xray-single', 'nut_shell').meets).not.toBe('yes')
  })
  it('a frozen meal is dry enough for a metal detector, and hides thin plastic from all', () => {
    expect(meal.finding('coil-single', 'ss316').meets).toBe('yes')
    expect(meal.finding('xray-single', 'pe').meets).not.toBe('yes')
    expect(meal.keptOut('pe')).toContain('choose-plastic-that-shows')
  })
  it('the British law speaks in Great Britain alone', () => {
    expect(meal.general()).toContain('gb-haccp-principles')
    for (const id of ['eu-haccp-principles', 'ni-registration']) expect(meal.general()).not.toContain(id)
  })
})

describe('large and wide', () => {
  const cheese = look(TRADE.cheeseBlock)
  const potatoes = look(TRADE.potatoes)
  it('a block of cheese is taken by a larger build, and says what is achievable', () => {
    expect(cheese.verdict('xray-single')).not.toBe('not-suitable')
    expect(cheese.finding('xray-single', 'ss316').expectedMm).not.toBeNull()
    expect(cheese.rules('coil-multi')).toContain('smaller-units-first')
  })
  it('potatoes on a wide belt are a case for a bulk machine', () => {
    expect(['not-suitable', 'no-build']).not.toContain(potatoes.verdict('xray-single'))
    expect(potatoes.finding('xray-single', 'steel').meets).toBe('yes')
  })
  it('an open belt is proved with a tracer, and counts its hold in kilograms', () =>
    expect(potatoes.rules('xray-single')).toContain('prove-every-link-on-the-belt'))
})

describe('ground spice', () => {
  const { finding, rules } = look(TRADE.spice)
  it('is dry: iron and 316 near 1 mm are found in the fall', () => {
    for (const metal of ['steel', 'ss316'])
      expect(finding('coil-free-fall', metal).expectedMm).toBeLessThan(1.2)
  })
  it('takes no air jet', () => expect(rules('coil-free-fall')).toContain('no-air-on-open-powder'))
})

describe('two lines at once', () => {
  const { lines, general } = look(TRADE.twoLines)
  it('each get an answer of their own', () =>
    expect(new Set(lines())).toEqual(new Set(['jar line', 'pouch line'])))
  it('are not asked which law, for the class was said', () =>
    expect(general()).not.toContain('say-what-kind-of-food'))
})
