/** Foods (reference ids) of the list "liquid" that set or are stiff enough to hold a piece where it fell. The project's own list. */
const STIFF = ['yoghurt', 'jam', 'peanut_butter', 'applesauce', 'honey']

/** True for food in which a piece stays where it fell; a solid or a custom liquid is not among them. */
export const holdsPieces = (food: string): boolean => STIFF.includes(food)
