/** Density of iron, g/cm³ (handbook). */
const IRON_G_PER_CM3 = 7.87

/**
 * Susceptibility χ of a dry food with iron powder: 3 × the volume fraction of iron (separate round grains
 * of high permeability). 10 to 50 mg per 100 g at 0.3 g/cm³ is about 1e-5 to 6e-5. Iron bound in a salt
 * does not answer; the brief's figure is taken as metallic powder.
 */
export function ironPowderSusceptibility(ironMgPerKg: number, bulkDensityGPerCm3: number): number {
  return (3 * ironMgPerKg * 1e-6 * bulkDensityGPerCm3) / IRON_G_PER_CM3
}
