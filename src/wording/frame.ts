import type { Severity } from "../results/caution.ts";

/** The few words a report writer adds by itself, around what the answers say. */
export interface FrameWords {
  readonly skipToContent: string;
  readonly contents: string;
  /** Stands where a card has no value. */
  readonly notKnown: string;
  readonly chart: string;
  /** Before the name of the file that holds a chart's specification. */
  readonly specification: string;
  /** Below the title of a chart that does not draw all there is: how many it draws of how many. */
  readonly thinned: {
    /** @param few  of so many one is drawn */
    readonly catches: (drawn: string, all: string, few: string) => string;
    readonly fills: (drawn: string, all: string) => string;
    readonly influences: (drawn: string, all: string) => string;
  };
  readonly severity: Readonly<Record<Severity, string>>;
}
