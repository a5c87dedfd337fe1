/** No scale for catches shows less, in any of the units; below it a mass is a slip. */
export const smallestMass = 1e-6;
