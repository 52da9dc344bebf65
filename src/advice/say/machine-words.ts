import { archetypes } from '../../reference/index.ts'

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

/** "dual-energy x-ray machine for cases and blocks": the build is what stands behind the label of the technology. */
function nounOf({ equipment, label }: Machine): string | undefined {
  const noun = AS_NOUN[equipment]
  const own = archetypes.get(equipment)?.label
  if (noun === undefined || own === undefined || !label.startsWith(`${own}, `)) return noun
  const build = label.slice(own.length + 2)
  return `${noun} ${build.startsWith('for ') ? build : `with a ${build}`}`
}

/** "a dual-energy x-ray machine". */
export function aMachine(machine: Machine): string {
  const noun = nounOf(machine)
  return noun === undefined ? machine.label : `${noun.startsWith('x-') ? 'an' : 'a'} ${noun}`
}

/** "the dual-energy x-ray machine". */
export function theMachine(machine: Machine): string {
  const noun = nounOf(machine)
  return noun === undefined ? machine.label : `the ${noun}`
}

/** "a larger build of the dual-energy x-ray machine". */
export const aLargerBuild = (machine: Machine): string => `a larger build of ${theMachine(machine)}`
