import type { FrameWords } from "../frame.ts";

/** The frame of a report in English. */
export const frame: FrameWords = {
  skipToContent: "Skip to content",
  contents: "Contents",
  notKnown: "not known",
  chart: "Chart",
  specification: "specification",
  severity: { note: "Note", doubt: "In doubt", serious: "Serious" },
};
