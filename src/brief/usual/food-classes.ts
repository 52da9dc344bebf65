/** Foods (reference ids) that the US meat and poultry inspection answers for. The project's own list. */
export const MEAT_OR_POULTRY: readonly string[] = [
  'beef_mince',
  'chicken_mince',
  'chicken_breast',
  'ham',
  'sausage',
]

/** Foods (reference ids) that are fish. */
export const FISH: readonly string[] = ['cod', 'salmon', 'tuna_canned']
