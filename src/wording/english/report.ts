import type { Verdict } from "../../analysis/verdict.ts";
import type { Format } from "../format.ts";

export type ReportWords = ReturnType<typeof englishReport>;

/** The words of a report around the answers: headings, verdicts, how it was made, cautions of the trade. */
export function englishReport(format: Format) {
  return {
    title: (setupTitle: string | null) => setupTitle ?? "Catch test report",
    subtitle: (bins: number, fills: number, catches: number) =>
      `${bins} ${bins === 1 ? "bin" : "bins"}, ${fills} ${fills === 1 ? "fill" : "fills"}, ${catches} ${catches === 1 ? "catch" : "catches"}`,
    meta: {
      source: "Catches from",
      setup: "Setup from",
      none: "none given",
      period: "Caught",
      periodWords: (first: string, last: string) =>
        first === last ? format.date(first) : `${format.date(first)} to ${format.date(last)}`,
      level: "Confidence",
      tolerance: "Tolerance",
      toleranceWords: (tolerance: number, given: boolean) =>
        given
          ? `${format.plusMinus(tolerance)}`
          : `${format.plusMinus(tolerance)} (assumed: the commonest advice in extension bulletins)`,
      version: "Made with",
    },
    columns: ["Bin", "Product", "Fill", "Catches", "Delivery", "Interval", "Verdict"],
    summary: "At a glance",
    cardTitle: (bin: string) => `Bin ${bin}`,
    cardSubtitle: (product: string, fill: number) => `${product}, fill ${fill}`,
    cardInterval: (level: number, interval: string | null) =>
      interval === null ? "no interval can be given" : `${format.percent(level, 0)}: ${interval}`,
    cardSpan: (halfWidth: number, tolerance: number) =>
      `known within ${format.plusMinus(halfWidth)}; tolerance ${format.plusMinus(tolerance)}`,
    cardScatter: (relative: number, turns: number) =>
      `${format.percent(relative)} at ${format.plain(turns)} turns`,
    cardFacts: {
      toSet: "To set",
      catches: "Catches of this fill",
      fills: "Fills in the log",
      scatter: "Catch scatter",
    },
    verdict: (verdict: Verdict): string => {
      switch (verdict.code) {
        case "check-first":
          return "Check something first";
        case "moved":
          return "This meter has moved";
        case "known-well-enough":
          return "Known well enough";
        case "not-yet":
          return "Not known well enough yet";
        case "unknown":
          return "Error not known";
      }
    },
    nextStep: (verdict: Verdict): string => {
      switch (verdict.code) {
        case "check-first":
          return verdict.catches.length > 0
            ? `Look at ${verdict.catches.length === 1 ? "catch" : "catches"} ${format.list(verdict.catches.map(String))} of this fill before you set the drive; what speaks against ${verdict.catches.length === 1 ? "it" : "them"} is said below.`
            : "Read the serious note on this bin below and settle it before you set the drive.";
        case "moved":
          return verdict.wellEnough
            ? "Set the drive to today's value, not to an earlier one, and inspect the meter."
            : "Do not use earlier figures: catch again, then set the drive to today's value, and inspect the meter.";
        case "known-well-enough":
          return `Set the drive to this value. Check the rate after the first ${format.units === "us" ? "acres" : "hectares"}.`;
        case "not-yet":
          return verdict.moreCatches === null
            ? "More catches alone will not reach the tolerance: use longer catches or a finer scale, or accept a wider one."
            : `Take ${format.count(verdict.moreCatches)} more ${verdict.moreCatches === 1 ? "catch" : "catches"} of ${format.plain(verdict.turns)} turns from this fill.`;
        case "unknown":
          return `Take at least two more catches of ${format.plain(verdict.turns)} turns from this fill.`;
      }
    },
    bin: (bin: string, product: string) => `Bin ${bin}: ${product}`,
    more: "Chart and figures",
    notes: "Notes on these figures",
    about: {
      heading: "How this was computed",
      paragraphs: [
        "One fill of a bin is one observation: catches of the same fill tell how well that fill is known, never how the next one will be.",
        "Delivery per turn of a fill is the sum of net mass over the sum of turns. Its interval is Student's t, on the catch scatter of all fills where there are any, with the error of reading the scale always added.",
        "Intervals are about what is written beside them: this fill's delivery, one more catch, the mean over fills, or the next fill. They are not interchangeable.",
        "Nothing in the file was corrected or left out unless it says so here. All figures stand unrounded in report.json.",
      ],
    },
    leftOut: {
      heading: "Catches left out",
      none: "None.",
      /** The reason, where the command was told to. */
      byCommand: "asked for by --leave-out",
      item: (bin: string, fill: number, one: number, row: number, reason: string) =>
        `Bin ${bin}, fill ${fill}, catch ${one} (row ${row}): ${reason}`,
    },
    where: {
      bin: (bin: string) => `Bin ${bin}`,
      fill: (fill: number) => `fill ${fill}`,
      catches: (catches: readonly number[]) =>
        `${catches.length === 1 ? "catch" : "catches"} ${format.list(catches.map(String))}`,
    },
    safety: {
      heading: "Cautions of the work",
      items: [
        "Stop the engine, take the key and wait until everything stands still before reaching near meters, chains, shafts or fans. Never slow a part by hand or with a stick.",
        "A motor-driven meter can start by itself: nobody at the outlet until the person at the switch says so. No loose clothing, hair or gloves near drives.",
        "Energy stays stored: block raised frames and lifted wheels, chock, relieve hydraulic pressure (a leak can inject oil through skin), and let a pressurised bin vent before opening a lid.",
        "Fan and exhaust are hot and loud: protect eyes and ears.",
        "Treated seed: read the tag, wear what it asks for, keep dust away from you and from bees, and keep caught seed out of food and feed.",
        "Dust of grain and fertiliser irritates eyes and lungs, and salts burn cuts: gloves, eye protection, a fitting respirator.",
        "Never enter a bin while product can move: a person is trapped in seconds. Work from outside with a pole; entry is a confined-space job for trained people.",
        "Bags are heavy: share the lift or use a machine, and nobody under a hung bag.",
        "On the move: lights, width, secured lids and ladders, no riders. Pick up spills; they harm animals and water.",
      ],
      deferral:
        "This report is arithmetic on your own weighings. The machine's operator's manual, the product label and seed tag, local law and codes, and qualified people come first; where they differ from this, follow them.",
    },
  };
}
