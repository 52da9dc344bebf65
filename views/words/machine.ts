import type { Option } from '../../src/contract/advice.ts'

/** Short names of the technologies compared, "detector" for metal detector, for tables and ladders; a machine of one's own keeps its name. */
const SHORT: Readonly<Record<string, string>> = {
  'xray-single': 'x-ray, single energy',
  'xray-dual': 'x-ray, dual energy',
  'xray-dual-fine': 'x-ray, dual, fine pixels',
  'xray-side': 'x-ray from the side',
  'xray-side-two-views': 'x-ray, two side views',
  'xray-counting': 'x-ray, photon counting',
  'xray-pipe': 'x-ray on the pipe',
  'coil-single': 'detector, one frequency',
  'coil-multi': 'detector, several frequencies',
  'coil-free-fall': 'detector, free fall',
  'coil-free-fall-multi': 'detector, free fall, several',
  'coil-pipe': 'detector on the pipe',
  'coil-pipe-multi': 'detector, pipe, several',
  'static-field': 'detector for iron in foil',
}

export const shortName = ({ equipment, label }: Pick<Option, 'equipment' | 'label'>): string =>
  SHORT[equipment] ?? label.replace(/ \(.*\)$/, '')
