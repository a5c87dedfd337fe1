/** How much of an analysis a report shows: what a hand needs, or all of it. */
export const editions = ["short", "full"] as const;

export type Edition = (typeof editions)[number];
