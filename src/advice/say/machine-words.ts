/** The technologies compared, as a sentence takes them; a machine of one's own keeps its name. */
export const AS_NOUN: Readonly<Record<string, string>> = {
  'xray-single': 'single-energy x-ray machine',
  'xray-dual': 'dual-energy x-ray machine',
  'xray-dual-fine': 'dual-energy x-ray machine with fine pixels',
  'xray-side': 'x-ray machine that looks from the side',
  'xray-side-two-views': 'x-ray machine with two side views',
  'xray-counting': 'photon-counting x-ray machine (ideal, for teaching)',
  'xray-pipe': 'x-ray machine on the pipe',
  'coil-single': 'metal detector with one frequency',
  'coil-multi': 'metal detector with several frequencies',
  'coil-free-fall': 'free-fall metal detector with one frequency',
  'coil-free-fall-multi': 'free-fall metal detector with several frequencies',
  'coil-pipe': 'pipe metal detector with one frequency',
  'coil-pipe-multi': 'pipe metal detector with several frequencies',
  'static-field': 'magnetic-field detector for iron in foil packs',
}

interface Machine {
  readonly equipment: string
  readonly label: string
}

/** "a dual-energy x-ray machine". */
export function aMachine({ equipment, label }: Machine): string {
  const noun = AS_NOUN[equipment]
  return noun === undefined ? label : `${noun.startsWith('x-') ? 'an' : 'a'} ${noun}`
}

/** "the dual-energy x-ray machine". */
export const theMachine = ({ equipment, label }: Machine): string =>
  AS_NOUN[equipment] === undefined ? label : `the ${AS_NOUN[equipment]}`

/** "a larger build of the dual-energy x-ray machine". */
export const aLargerBuild = (machine: Machine): string => `a larger build of ${theMachine(machine)}`
