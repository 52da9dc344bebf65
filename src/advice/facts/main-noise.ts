import type { XrayFinding } from '../../xray/assessment.ts'

const NOISE_WORDS = {
  photon: 'too few x-rays through the pack',
  electronics: "the detector's own noise",
  grain: 'the grain pattern of the food',
  unevenness: 'unevenness of the food',
  packaging: 'unevenness of the container wall',
} as const

/** The kind of noise that hides most, in words. */
export function mainNoise(finding: XrayFinding): { words: string; share: number } {
  const [kind, share] = Object.entries(finding.noise).sort((a, b) => b[1] - a[1])[0] as [
    keyof typeof NOISE_WORDS,
    number,
  ]
  return { words: NOISE_WORDS[kind], share }
}
