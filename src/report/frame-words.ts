import type { FrameWords } from "./document.ts";

/** The frame of a report in English. */
export const englishFrameWords: FrameWords = {
  skipToContent: "Skip to content",
  contents: "Contents",
  nextStep: "Next step",
  notKnown: "not known",
  chart: "Chart",
  specification: "specification",
  severity: { note: "Note", caution: "Caution", serious: "Serious" },
};
