/** Outside these no variance of a meter relative to its delivery lies, and within them no later arithmetic overflows. */
export const leastVariance = 1e-24;
export const mostVariance = 1000;
/** A variance told on less than one degree of freedom tells nothing. */
export const leastDf = 1;
export const mostDf = 1_000_000;

/** Bins a class of products and type of meter needs, so that nobody's meter is told by itself: fewer are left out. */
export const fewestBins = 5;

/** Meters from which on heterogeneities and typical figures are estimated: from fewer they would mislead. */
export const fewestToEstimate = 30;
