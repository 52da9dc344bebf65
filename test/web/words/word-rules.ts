/** A word that must not stand on a page, and what to say instead. */
export interface WordRule {
  readonly never: RegExp
  readonly say: string
  readonly because: string
  /** Pages that may: their paths begin so. */
  readonly but?: readonly string[]
}

/** The consultant's detail: calculations walked to their end, rules with their conditions. */
const DETAIL = ['/advice/trail', '/advice/rules', '/rules']

/** What pages say, held on every page that can be reached. */
export const NEVER: WordRule[] = [
  {
    never:
      /\b(?:detection|detectable|detectability|sensitivity|physical|size|finding) limits?\b|\blimits? of detection\b/i,
    say: 'best possible',
    because: '"limit" reads as critical limit',
  },
  {
    never: /\binduct(?:ion|ive)\b/i,
    say: 'metal detector (balanced coil)',
    because: 'packers read "induction" as cap sealing',
    but: DETAIL,
  },
  {
    never: /\btextur(?:e|es|ed|al)\b/i,
    say: 'grain pattern, or unevenness',
    because: 'food people hear mouthfeel',
    but: ['/advice/trail'],
  },
  { never: /\bpixel pitch\b|\bdetector pitch\b/i, say: 'pixel size', because: '"pitch" is pack spacing' },
  {
    never: /\b\d+ passes\b|\bpasses (?:out )?of\b|\bPASS(?:ED)?\b|\bpass(?:ed)? or fail(?:ed)?\b/,
    say: 'runs, found',
    because: '"passes" reads as PASS',
  },
  {
    never: /\bprobability of detection\b|\bPOD\b/i,
    say: 'chance of finding',
    because: 'the other belongs to the consultant',
    but: DETAIL,
  },
  {
    never: /\ba90\b|\ba90\/95\b|\b90\/95\b/,
    say: 'size found 9 times in 10, 95 % sure',
    because: 'the code is for statisticians',
  },
  {
    never:
      /\b(?:best-fit|worth-a-test|not-suitable|xray-(?:single|dual|side)|coil-(?:single|multi|pipe)|static-field)\b(?! detector)/,
    say: 'the words of the verdict or the name of the machine',
    because: 'codes are for programs',
    but: ['/advice/trail', '/advice/difference', '/advice/rules', '/rules'],
  },
  {
    never:
      /\b(?:bestMm|expectedMm|cautiousMm|mustFindMm|falseRejectsPerPack|heightMm|speedMPerMin|packsPerMin)\b/,
    say: 'the label of the field',
    because: 'names of code are for programs',
    but: ['/advice/difference'],
  },
  {
    never: /false[- ]rejects?(?: rate)?(?: per pack)?(?: is| of|:|,)? 0[.,]0\d+/i,
    say: '1 in 1,000: about 77 packs a day',
    because: 'a share is felt as packs',
  },
  {
    never:
      /\b(?:machine|product|pack|line|advice|brief|it|this|is|are|been) (?:is |are )?(?:approved|certified)\b|\bguarantee[sd]?\b|\bfoolproof\b|\b100 % (?:safe|found|detection)\b/i,
    say: 'best fit to this brief, or test first',
    because: 'nothing here approves, validates or promises',
  },
  {
    never: /\b(?:you are|product is|pack is|food is) safe\b|\bsafe to eat\b/i,
    say: 'what was found and what was not',
    because: 'no page can say that food is safe',
  },
]

/** What a thing was called once; it has one name now. */
const RENAMED: readonly (readonly [was: RegExp, say: string])[] = [
  [/\bpromise no better than\b|\bno better than\b/i, 'safe to promise'],
  [/\bpacking fraction\b/i, 'fill fraction'],
  [/\bnot for this\b/i, 'not suitable'],
  [/\bworth a test\b/i, 'test first'],
  [/\bfound half the time\b/i, '50 % size'],
  [/\bdid not fire\b|\bfired\b/i, 'applies, does not apply'],
  [/\bscore \d/i, 'what it would turn'],
  [/\bfor paper\b/i, 'Print'],
]
NEVER.push(...RENAMED.map(([never, say]) => ({ never, say, because: 'one thing has one name' })))

/** A word that may stand once on a page, to lead readers to ours. */
export const ONCE: readonly { readonly word: RegExp; readonly say: string }[] = [
  { word: /\bsensitivit(?:y|ies)\b/gi, say: 'findable size (the trade says sensitivity)' },
]

/** A short form that may stand only on a page that spells it out. */
export const SPELT_OUT: readonly { readonly short: RegExp; readonly long: RegExp }[] = [
  { short: /\bCCPs?\b/, long: /critical control points? \(CCPs?\)/i },
  { short: /\bOPRPs?\b/, long: /operational prerequisites?[^()]{0,30}\(OPRPs?\)/i },
  { short: /\bPRPs?\b/, long: /prerequisites?[^()]{0,30}\(PRPs?\)/i },
]

/** What a page that names the one has to name as well. */
export const NAMED_IN_FULL: readonly {
  readonly where: RegExp
  readonly names: RegExp
  readonly full: RegExp
}[] = [
  {
    where: /^\/(?:advice|compare)\?/,
    names: /(?:metal )?detector, (?:one frequency|several frequencies)|metal detector around/,
    full: /metal detector \(balanced coil\)/,
  },
  {
    where: /^\/advice\?b=[^&]*$/,
    names: /\bsafe to promise\b/i,
    full: /findable size/i,
  },
]
