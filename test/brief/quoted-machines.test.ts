import { describe, expect, it } from 'vitest'
import { readForm } from '../../src/brief/form/form.ts'
import { fieldAt } from '../../src/brief/form/form-fields.ts'
import { labelOf } from '../../src/brief/form/form-labels.ts'
import { writeForm } from '../../src/brief/form/form-writing.ts'
import { kindAsMachine, NEAREST_KINDS, QUOTED_FIGURES } from '../../src/brief/form/quoted-fields.ts'
import { parseBrief } from '../../src/brief/index.ts'
import { type BriefInput, DETECTOR_FAMILIES } from '../../src/contract/index.ts'

const rest = {
  'product.food': 'hazelnut',
  'points.0.stage': 'packed',
  'points.0.heightMm': '30',
  'points.0.widthMm': '160',
  'points.0.lengthMm': '180',
  'points.0.speedMPerMin': '40',
  'contaminants.0.material': 'quartz',
  'contaminants.0.mustFindMm': '3',
}
const equipmentOf = (answers: Readonly<Record<string, string>>) =>
  (readForm({ ...rest, ...answers }).input as BriefInput).equipment

const typed = {
  'quoted.0.kind': 'xray-dual',
  'quoted.0.label': 'offer of March',
  'quoted.0.highestKV': '80',
  'quoted.0.pixelMm': '0,4',
  'quoted.0.maxPowerW': '0.35 kW',
}

describe('a machine typed in by the figures of a quote', () => {
  it('is the nearest kind with the figures of the quote in their place', () => {
    const kind = kindAsMachine('xray-dual')
    expect(equipmentOf(typed)).toEqual([
      {
        ...kind,
        id: 'quoted-1',
        label: 'offer of March',
        kVRange: [60, 80],
        pixelMm: 0.4,
        maxPowerW: 350,
      },
    ])
    expect(parseBrief(readForm({ ...rest, ...typed }).input)).toMatchObject({ ok: true })
  })

  it('has a fixed voltage where lowest and highest are one', () => {
    const [machine] = equipmentOf({ ...typed, 'quoted.0.lowestKV': '80' }) ?? []
    expect(machine).toMatchObject({ kV: 80 })
    expect(machine).not.toHaveProperty('kVRange')
  })

  it('says what was taken from the kind, and understands units', () => {
    const { taken, understood } = readForm({ ...rest, ...typed })
    expect(taken['quoted.0.lowestKV']).toBe('60 kV')
    expect(taken['quoted.0.filterAlMm']).toBe('1 mm')
    expect(taken['quoted.0.pixelMm']).toBeUndefined()
    expect(taken['quoted.0.apertureHeightMm']).toBeUndefined()
    expect(understood).toMatchObject({ 'quoted.0.maxPowerW': '350 W', 'quoted.0.pixelMm': '0.4 mm' })
  })

  it('asks for the nearest kind, and names figures the kind cannot have', () => {
    expect(readForm({ ...rest, 'quoted.3.pixelMm': '0.4' }).problems).toEqual([
      { path: 'quoted.3.kind', message: 'Choose the nearest kind of quoted machine 1' },
    ])
    expect(readForm({ ...rest, 'quoted.0.kind': 'coil-multi', 'quoted.0.pixelMm': '0.4' }).problems).toEqual([
      { path: 'quoted.0.pixelMm', message: 'Pixel size: a metal detector has none; leave it empty' },
    ])
    expect(
      readForm({ ...rest, 'quoted.0.kind': 'coil-multi', 'quoted.0.frequenciesKHz': '50; many' }).problems,
    ).toEqual([
      { path: 'quoted.0.frequenciesKHz', message: expect.stringMatching(/^Frequencies: write a number/) },
    ])
  })

  it('finds the field of a problem the brief has with it', () => {
    const read = readForm({
      ...rest,
      'equipment.coil-single': 'on',
      'quoted.0.label': '',
      'quoted.2.kind': 'xray-single',
      'quoted.2.lowestKV': '90',
      machines: '{"id":"mesh","family":"sieve"}',
    })
    expect(read.formPath('equipment.0')).toBe('equipment')
    expect(read.formPath('equipment.1.kVRange')).toBe('quoted.2.lowestKV')
    expect(read.formPath('equipment.1.detectorLayers.0.swank')).toBe('quoted.2.kind')
    expect(read.formPath('equipment.2.meshMm')).toBe('machines')
    expect(parseBrief(read.input)).toMatchObject({
      ok: false,
      problems: [{ path: 'equipment.1.kVRange' }],
    })
  })

  it('comes back unchanged, every kind of detector, changed or not', () => {
    const machines = NEAREST_KINDS.flatMap((id, at) => {
      const kind = kindAsMachine(id)!
      const own = { ...kind, id: `own-${at}` }
      return [own, { ...own, id: `narrow-${at}`, label: `narrow ${at}`, maxWidthMm: 123 }]
    })
    const brief = { product: { food: 'hazelnut' }, points: [{}], contaminants: [], equipment: machines }
    expect(equipmentOf(writeForm(brief as BriefInput))).toEqual(machines)
  })

  it('comes back unchanged where no kind is like it, and shows its figures', () => {
    const odd = { id: 'odd', family: 'coil' as const, frequenciesKHz: [17, 170], use: 'together' as const }
    const answers = writeForm({
      product: { food: 'hazelnut' },
      points: [{}],
      contaminants: [],
      equipment: [odd],
    })
    expect(answers['quoted.0.kind']).toBeUndefined()
    expect(answers['quoted.0.frequenciesKHz']).toBe('17, 170')
    expect(equipmentOf(answers)).toEqual([odd])
    const twice = { ...kindAsMachine('xray-single')!, id: 'twice', kV: 50 }
    const both = { product: { food: 'hazelnut' }, points: [{}], contaminants: [], equipment: [twice] }
    expect(equipmentOf(writeForm(both as BriefInput))).toEqual([twice])
  })

  it('gives every machine its own id, whatever rows are taken out', () => {
    const [first] = equipmentOf({ 'quoted.0.kind': 'coil-single' }) ?? []
    const ids = equipmentOf({
      'quoted.0.base': JSON.stringify(first),
      'quoted.0.kind': 'coil-single',
      'quoted.1.kind': 'coil-single',
    })?.map((one) => (typeof one === 'string' ? one : one.id))
    expect(ids).toEqual(['quoted-1', 'quoted-2'])
  })

  it('offers detectors only, and has words for every figure', () => {
    for (const id of NEAREST_KINDS) expect(DETECTOR_FAMILIES).toContain(kindAsMachine(id)?.family)
    for (const key of ['kind', 'label', ...Object.keys(QUOTED_FIGURES)]) {
      expect(labelOf(`quoted.0.${key}`), key).not.toBe(`quoted.0.${key}`)
      expect(fieldAt(`quoted.0.${key}`), key).toBeDefined()
    }
  })
})
