/** Acceleration of gravity, m/s² (standard value, 1901). */
export const GRAVITY_M_PER_S2 = 9.80665
/** Magnetic constant, T·m/A; the 2019 value differs in the tenth digit. */
export const MU0_T_M_PER_A = 4e-7 * Math.PI
