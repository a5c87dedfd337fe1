import type { FrameWords } from "../frame.ts";

/** The frame of a report in English. */
export const frame: FrameWords = {
  skipToContent: "Skip to content",
  contents: "Contents",
  notKnown: "not known",
  chart: "Chart",
  specification: "specification",
  thinned: {
    catches: (drawn, all, few) =>
      `${drawn} of ${all} catches are drawn: one of every ${few}, the highest, the lowest, and all that stand out.`,
    fills: (drawn, all) =>
      `${drawn} of ${all} fills are drawn: of every few the highest and the lowest, and all that stand out.`,
    influences: (drawn, all) =>
      `Shown are the ${drawn} of ${all} catches that change the delivery most.`,
  },
  severity: { note: "Note", doubt: "In doubt", serious: "Serious" },
};
