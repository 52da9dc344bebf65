/** Foods (reference ids) that the US meat and poultry inspection answers for. The project's own list. */
const MEAT_OR_POULTRY = ['beef_mince', 'chicken_mince', 'chicken_breast', 'ham', 'sausage']
/** Foods (reference ids) that are fish. */
const FISH = ['cod', 'salmon', 'tuna_canned']

/** True for meat and poultry; null for a custom food, whose kind nobody has stated. */
export const isMeatOrPoultry = (food: string): boolean | null =>
  food === 'custom' ? null : MEAT_OR_POULTRY.includes(food)

/** True for fish; null for a custom food. */
export const isFish = (food: string): boolean | null => (food === 'custom' ? null : FISH.includes(food))

/** True when a claim on the label says organic, in one of the words for it. */
export const saysOrganic = (claims: readonly string[]): boolean =>
  claims.some((claim) => /\b(organic|organically|bio|biologique|ökologisch|eko)\b/i.test(claim))
