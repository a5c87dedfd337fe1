/** What a page may hold at most, where a hand in a glove reads it. */
export interface Budget {
  readonly words: number;
  /** Of a phone, 390 × 844. */
  readonly screens: number;
  /** Printed, A4. */
  readonly pages: number;
}

/** Of the short reports on the demo data; the page of the first action must end within the first screen. */
export const budgets: Readonly<Record<string, Budget>> = {
  "first-morning": { words: 500, screens: 4, pages: 3 },
  season: { words: 1200, screens: 10, pages: 8 },
};

/** What was counted of one page. */
export interface Counted extends Budget {
  readonly name: string;
  readonly edition: string;
  /** The lower edge of the first line to act on, in pixels on a phone. */
  readonly firstAction: number;
  readonly screensWide: number;
  readonly bytes: number;
  readonly bytesZipped: number;
}
