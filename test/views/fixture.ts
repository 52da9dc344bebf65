import { NO_RECORDS } from '../../src/checks/records-of.ts'
import type { Advice, BriefInput, Finding, Option } from '../../src/contract/index.ts'

/** An advice written by hand to show every state a page can meet; its sizes are not computed. */
export const brief: BriefInput = {
  title: 'Kernels <1 kg> & "friends"',
  market: 'EU',
  product: { food: 'hazelnut' },
  points: [
    { name: 'belt', stage: 'loose', heightMm: 15, widthMm: 400, lengthMm: 400, speedMPerMin: 20 },
    {
      name: 'after packing',
      stage: 'packed',
      heightMm: 45,
      widthMm: 170,
      lengthMm: 220,
      speedMPerMin: 30,
      packsPerMin: 80,
    },
  ],
  contaminants: [
    { material: 'quartz', shape: 'sphere', mustFindMm: 3, basis: 'customer' },
    { material: 'ss304', shape: 'wire', lengthMm: 10, mustFindMm: 0.6, basis: 'customer' },
    { material: 'wood', shape: 'sphere', basis: 'best-achievable' },
  ],
  quotes: [{ equipment: 'xray-dual', material: 'quartz', sizeMm: 1, obtained: 'in-product' }],
}

const blank: Finding = {
  contaminant: 0,
  material: 'quartz',
  shape: 'sphere',
  placement: 'inside',
  lengthMm: null,
  faceMm2: null,
  bestMm: null,
  bestRangeMm: null,
  extrapolated: null,
  halfMm: null,
  expectedMm: null,
  sureMm: null,
  cautiousMm: null,
  chanceAtMustFind: null,
  chanceAnyOrientation: null,
  meets: 'cannot',
  mustFindMm: 3,
  demonstrated: null,
  measured: false,
  curve: { sizesMm: [], chance: [] },
  zones: [],
  widest: '',
  note: '',
  calculation: 'size',
}

const quartz = (more: Partial<Finding>): Finding => ({ ...blank, ...more })
const wire = (more: Partial<Finding>): Finding => ({
  ...blank,
  contaminant: 1,
  material: 'ss304',
  shape: 'wire',
  lengthMm: 10,
  mustFindMm: 0.6,
  ...more,
})
const wood: Finding = {
  ...blank,
  contaminant: 2,
  material: 'wood',
  mustFindMm: null,
  note: 'Wood is lighter than the kernels and looks like a void.',
}

const option = (equipment: string, label: string, more: Partial<Option>): Option => ({
  equipment,
  label,
  family: 'xray',
  rank: 1,
  burden: 3,
  verdict: 'worth-a-test',
  build: null,
  askFor: null,
  beam: null,
  because: 'Quartz may be found at the size asked.',
  grounds: [],
  settings: { kV: 60, mA: 10, frequenciesKHz: [] },
  findings: [],
  reasons: [],
  whyNot: [],
  cautions: [],
  ...more,
})

const dual = option('xray-dual', 'x-ray from above, dual energy', {
  verdict: 'best-fit',
  burden: 4,
  because: 'Every size asked is met with the cautious value.',
  findings: [
    quartz({
      bestMm: 2.01,
      halfMm: 2.21,
      expectedMm: 2.41,
      sureMm: 2.71,
      cautiousMm: 2.91,
      chanceAtMustFind: 0.9951,
      meets: 'yes',
      zones: [
        {
          name: 'seam',
          state: 'degraded',
          share: null,
          pathMm: null,
          sizes: { bestMm: 2.8, expectedMm: 3.4, cautiousMm: null },
          canLieThere: true,
          settlesThere: false,
          why: 'Film lies double at the seam.',
        },
      ],
    }),
    wire({ bestMm: 0.3, halfMm: 0.34, expectedMm: 0.4, sureMm: 0.5, cautiousMm: 0.55, meets: 'yes' }),
    wood,
  ],
  reasons: [
    {
      rule: 'grain-limits-one-energy',
      type: 'favours',
      text: 'Dual energy cancels the pattern of kernels <script>alert(1)</script>.',
      because: 'Two energies weigh the same grain differently.',
      truth: 'true',
      decisive: true,
      trace: 'p1.xray-dual.grain-limits-one-energy',
      evidence: 'computed',
      sources: ['s1'],
      book: 'gritwise',
      title: 'Grain hides stones',
      exception: 'Powders have no grain to cancel.',
      answeredBy: null,
      contaminant: null,
    },
  ],
  cautions: [{ id: 'rays', text: 'Keep the curtains whole.', sources: [] }],
})

const single = option('xray-single', 'x-ray from above, single energy', {
  rank: 2,
  findings: [
    quartz({ bestMm: 2.2, halfMm: 2.5, expectedMm: 2.9, sureMm: 3.6, cautiousMm: null, meets: 'maybe' }),
    wire({ bestMm: 0.4, halfMm: 0.6, expectedMm: 0.72, sureMm: 0.9, cautiousMm: 1.04, meets: 'no' }),
    wood,
  ],
  whyNot: [
    {
      kind: 'size',
      contaminant: 1,
      others: [],
      gapMm: 0.12,
      text: 'The wire is missed by 0.12 mm.',
      grounds: [],
    },
  ],
})

const coil = option('coil-multi', 'metal detector, several frequencies together', {
  family: 'coil',
  rank: 3,
  burden: 2,
  verdict: 'not-suitable',
  because: 'It sees metal only.',
  settings: { kV: null, mA: null, frequenciesKHz: [100, 300] },
  findings: [quartz({}), wire({ bestMm: 0.7, expectedMm: 0.9, cautiousMm: 1.2, meets: 'no' }), wood],
  whyNot: [{ kind: 'rule', rule: 'no-metal', text: 'Quartz is no metal.' }],
})

export const advice: Advice = {
  brief,
  assumed: [
    {
      path: 'points.0.hoursPerDay',
      label: 'hours per day',
      value: 16,
      range: [8, 24],
      because: 'two shifts',
    },
    { path: 'product.voidFree', label: 'void-free', value: false, range: null, because: 'rarely true' },
  ],
  missing: [
    {
      path: 'points.0.hoursPerDay',
      label: 'hours per day',
      score: 1.25,
      effect: 'Turns an answer: at 24 single energy does not meet quartz.',
      grounds: [],
    },
  ],
  versions: { gritwise: '0.1.0', rules: 'r1', reference: 'd1' },
  summary: 'Dual-energy x-ray after packing finds the quartz and the wire; nothing finds the wood.',
  points: [
    { name: 'belt', reasons: [], options: [single], removals: [], contrasts: [], closeCall: null },
    {
      name: 'after packing',
      reasons: [],
      options: [dual, single, coil],
      contrasts: [
        {
          first: 'xray-dual',
          second: 'xray-single',
          because:
            'Of the sizes of severity 3, dual energy leaves none unmet; single energy leaves the wire.',
          grounds: [],
          verdict: ['best-fit', 'worth-a-test'],
          burden: [4, 3],
          sizes: [
            { contaminant: 1, meets: ['yes', 'no'], expectedMm: [0.4, 0.72], cautiousMm: [0.55, 1.04] },
          ],
          rules: [
            {
              rule: 'grain-limits-one-energy',
              title: 'Grain hides stones',
              type: 'favours',
              contaminant: null,
              outcomes: ['fired', 'not-fired'],
              text: 'Dual energy cancels the pattern of kernels.',
            },
          ],
        },
      ],
      closeCall: {
        first: 'xray-dual',
        second: 'xray-single',
        contaminants: [0],
        because: 'The choice is close: it hangs on quartz of 3.0 mm with single energy.',
        test: 'Test single energy on your product with quartz of 3.0 mm: 29 of 29 found.',
        grounds: [],
      },
      removals: [
        {
          equipment: 'sieve',
          label: 'sieve',
          contaminant: 0,
          shareRemoved: [0.2, 0.6],
          ceiling: 0.9,
          neverRemoves: 'pieces of kernel size',
          condition: 'mesh above the largest kernel',
          because: 'a kernel and a stone of one size share an opening',
          goodProductLost: [0.001, 0.004],
          goodProductLostUnit: 'share of the product',
          unsuitable: '',
          reasons: [],
          calculation: 'p1.sieve.c0.share',
        },
      ],
    },
  ],
  answer: {
    sentence: 'Put x-ray, dual energy, at “after packing”. Safe to promise: all 2 sizes asked.',
    parts: [
      {
        line: '',
        text: 'Put x-ray, dual energy, at “after packing”.',
        rule: 'put-one-machine',
        trace: 'l0.put-one-machine',
        sources: [],
      },
    ],
    rows: [
      {
        line: '',
        contaminant: 2,
        askedMm: null,
        promisedMm: null,
        demonstrated: null,
        expectedMm: null,
        equipment: null,
        point: null,
        meets: 'cannot',
        places: [],
        left: {
          kind: 'prevent',
          text: 'No machine compared here finds it: keep it out.',
          rule: 'left-to-keep-out',
          trace: 'l0.c2.left-to-keep-out',
          sources: [],
        },
      },
    ],
    ask: [],
    test: [],
  },
  combination: {
    uses: [{ line: '', point: 'after packing', equipment: 'xray-dual', contaminants: [0, 1], expected: [] }],
    unmet: [
      { line: '', contaminant: 2, achievableMm: null, equipment: null, point: null, why: 'Keep it out.' },
    ],
    because: 'One machine meets both.',
    grounds: [
      {
        line: '',
        text: 'One machine meets both.',
        rule: 'one-machine',
        trace: 'l0.one-machine',
        sources: [],
      },
    ],
    independence: 'Two looks at the same thing miss the same pieces.',
    independenceGrounds: [],
    stillEnters: [
      {
        point: 'belt',
        contaminants: [1],
        text: 'The wire can still enter behind the belt.',
        rules: ['enters-behind-this-point'],
      },
      {
        point: 'after packing',
        contaminants: null,
        text: 'The pack is closed here.',
        rules: ['closed-pack-lets-nothing-in'],
      },
    ],
  },
  prevention: [
    {
      contaminant: 2,
      lines: [''],
      text: 'Keep wood out of open-food areas.',
      sources: [],
      rules: ['keep-wood-out'],
    },
  ],
  changes: [
    {
      inputs: [{ path: 'points.0', from: 'belt', to: 'after packing' }],
      equipment: 'xray-dual',
      effect: 'x-ray, dual energy meets the wire there',
      grounds: [],
      verified: true,
    },
    {
      inputs: [
        { path: 'points.1.heightMm', from: 45, to: 30 },
        { path: 'points.1.speedMPerMin', from: 30, to: 45 },
      ],
      equipment: 'xray-single',
      effect: 'x-ray, single energy meets the wire',
      grounds: [],
      verified: true,
    },
  ],
  changesNote: 'Depth and speed were tried together.',
  changesGrounds: [],
  quotes: [
    {
      quote: 0,
      judgement: 'better-than-possible',
      text: 'Quoted 1.0 mm; the best possible in this product is 2.0 mm.',
      questions: ['How many runs in fresh packs, and how many found?'],
      grounds: [],
    },
  ],
  register: NO_RECORDS.register,
  checks: NO_RECORDS.checks,
  trace: {
    versions: { gritwise: '0.1.0', rules: 'r1', reference: 'd1' },
    facts: [
      {
        id: 'f-height',
        scope: 'point 1',
        label: 'height of the food',
        value: 45,
        unit: 'mm',
        origin: 'entered',
      },
    ],
    calculations: [
      {
        id: 'size',
        label: 'expected size of quartz',
        symbol: 'd₉₀',
        value: 2.41,
        unit: 'mm',
        formula: 'POD(d) = 0.90',
        inputs: ['contrast', 'noise', 'f-height'],
        sources: [],
      },
      {
        id: 'contrast',
        label: 'contrast of the sphere',
        symbol: 'C',
        value: 0.0123456,
        unit: '',
        formula: '1 − exp(−Δμ·l)',
        inputs: ['mu'],
        sources: [],
      },
      {
        id: 'noise',
        label: 'noise at the pixel',
        symbol: 'q',
        value: 0.00000345,
        unit: 'mm²',
        formula: 'V/S²·a²',
        inputs: ['mu'],
        sources: [],
      },
      {
        id: 'mu',
        label: 'attenuation of quartz at 40 keV',
        symbol: 'μ',
        value: 0.0689,
        unit: '1/mm',
        formula: '',
        inputs: [],
        sources: ['s1'],
      },
    ],
    rules: [
      {
        key: 'p1.xray-dual.grain-limits-one-energy',
        id: 'grain-limits-one-energy',
        title: 'Grain hides stones',
        type: 'favours',
        book: 'gritwise',
        decisive: ['0'],
        equipment: 'xray-dual',
        point: 'after packing',
        contaminant: null,
        outcome: 'fired',
        conditions: {
          kind: 'all',
          truth: 'true',
          children: [
            {
              kind: 'leaf',
              truth: 'true',
              fact: 'product.grainMm',
              label: 'grain size',
              value: 13,
              unit: 'mm',
              origin: 'assumed',
              operator: 'greaterThan',
              threshold: { id: 'threshold.grain', value: 5, unit: 'mm' },
              margin: { absolute: 8, relative: 1.6 },
            },
          ],
        },
      },
      {
        key: 'p1.xray-dual.foil-closes-coil',
        id: 'foil-closes-coil',
        title: 'Foil closes the coil',
        type: 'excludes',
        book: 'gritwise',
        decisive: [''],
        equipment: 'xray-dual',
        point: 'after packing',
        contaminant: null,
        outcome: 'not-applicable',
        conditions: { kind: 'leaf', truth: 'not-applicable', fact: 'wrapper.foil', operator: 'equal' },
      },
    ],
    sources: [{ id: 's1', text: 'Table of attenuation coefficients', mark: 'V' }],
  },
  cautions: [],
}

export const names = new Map([
  ['quartz', 'quartz, flint or chert'],
  ['ss304', 'stainless steel 304'],
  ['wood', 'wood, air dry'],
])
