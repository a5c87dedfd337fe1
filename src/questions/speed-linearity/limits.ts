/** Below it a slope has one degree of freedom at most, and an interval that says nothing. */
export const fewestCatches = 4;

/** Highest over lowest meter speed. Chosen by us: nearer together, a few percent of scatter hide any effect of speed. */
export const leastSpeedRatio = 1.2;
