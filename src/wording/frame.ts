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
  readonly severity: Readonly<Record<Severity, string>>;
}
