import type { FillName } from "../../results/fill-name.ts";
import type { Question } from "../../results/question.ts";
import type { Counts, Facts } from "./facts.ts";
import { questions } from "./questions.ts";

type Failed = Facts<"reason"> & { readonly question: Question };

interface FilesRead {
  readonly files: readonly string[];
  readonly firstRows: readonly number[];
}

/** Cautions about what file and setup give away. */
export const cautionsFile = {
  labels: {
    libraryLendsNothing: (file: string | null) =>
      `${file === null ? "The library of other meters" : `The library ${file}`} lends nothing here: two or more of your own bins hold the same product, and they alone are asked.`,
    binNotCaught: (f: Facts<"name" | "instead">) =>
      `Bin "${f.name}" of the setup has no catches; did you mean "${f.instead}"? If so, spell it as the catches do.`,
    question: (name: Question) => `"${questions[name]}"`,
    weightsAlike: (step: string) =>
      `Your weights are all the same and so show no steps; ${step}, the coarsest step that fits them, is taken as the scale's division. If it is another, give it in the setup (scale, division).`,
  },
  "catch-far-from-fellows": (times: string) =>
    `This catch delivers ${times} times what its fellows do per turn. Look for a slipped decimal point, another unit or miscounted turns. Nothing was changed.`,
  "unit-looks-wrong": (f: Facts<"unit" | "mass" | "delivery">) =>
    `Read as ${f.unit}, a catch weighs ${f.mass} and the meter delivers ${f.delivery}, which is unusual. Check that the mass columns really are in ${f.unit}.`,
  "newest-fill-left-out": (f: { readonly leftOutFill: FillName; readonly fill: FillName | null }) =>
    `Every catch of fill ${f.leftOutFill} is left out, so nothing is known of it; the figures here are those of fill ${f.fill}.`,
  "not-computed": (f: Failed) =>
    `"${questions[f.question]}" could not be computed (${f.reason}). Everything else was. That is a fault of the program: please report it with the file.`,
  "needed-not-computed": (f: Failed) =>
    `"${questions[f.question]}" could not be computed (${f.reason}), and it is needed to say what to set. That is a fault of the program: please report it with the file.`,
  "catch-without-mass": (f: Facts<"reason">) =>
    `This catch is left out and has no mass (${f.reason}). It stands in the log and counts for nothing.`,
  "files-read-together": (f: FilesRead) =>
    `The catches come from ${f.files.length} files, and rows are counted through them: ${f.files.map((file, i) => `${file} from row ${f.firstRows[i]}`).join(", ")}.`,
  "turns-from-area": (
    f: Counts<"catches"> & Facts<"turns" | "area"> & { readonly assumed: boolean },
  ) =>
    `The turns of ${f.catches} catches were not counted but worked out from the area they stand for, at ${f.turns} meter turns/${f.area}${f.assumed ? ", a figure that is assumed: slip of the wheel is not given, or another step was caught than the one it is known of" : ""}.`,
  "one-bin-taken": (f: Counts<"catches">) =>
    `The catches name no bin, product or fill, so ${f.catches === 1 ? "it is" : "all of them are"} taken for the first fill of one bin.`,
  "turns-all-equal": (f: Facts<"turns", "tare">) =>
    `All catches have ${f.turns} turns, so a tare left in every catch cannot be seen${f.tare === null ? "" : `; it would make the delivery ${f.tare} too high`}. Mix two turn levels, the longer twice the shorter, once a season.`,
  "division-read-from-digits": (step: string) =>
    `Your weights end in steps of ${step}; taken as the scale's division. If it is another, give it in the setup (scale, division).`,
  "needs-rows": (asked: string) =>
    `Not answered from totals: ${asked}. That takes the single catches; whether one of them stands out, totals do not tell.`,
  "library-lends": (f: Facts<"factor", "file"> & Counts<"spreads" | "scatters">) =>
    `${f.file === null ? "A library of other meters" : `The library ${f.file}`} lends how much fills differ (${f.spreads === 1 ? "1 meter" : `${f.spreads} meters`}) and how much catches scatter (${f.scatters === 1 ? "1 meter" : `${f.scatters} meters`}), as other bins do; what a bin delivers only its own catches say. That 95 in 100 meters lie within a factor ${f.factor} of the middle is assumed, not measured.`,
  "library-not-read": (f: Facts<"name">) =>
    `The setup names the library of spreads ${f.name}, which was not read, so nothing is borrowed from it. Give its records as the option library.`,
  "setup-name-not-caught": (f: Facts<"name" | "instead", "bin">) =>
    `Product "${f.name}" of the setup has no catches in bin ${f.bin}; did you mean "${f.instead}"? If so, spell it as the catches do.`,
  "setup-key-not-caught": (
    f: Facts<"name", "instead" | "bin"> & { readonly key: "machine" | "farm" | "season" },
  ) =>
    `The setup names ${f.key} "${f.name}" for bin ${f.bin}, and no catch names it, so that entry counts for nothing${f.instead === null ? ". Name it in the catches, or leave it out of the setup." : `; did you mean "${f.instead}"? If so, spell it as the catches do.`}`,
  "setup-season-missing": (f: Counts<"number"> & Facts<never, "bin">) =>
    `The setup names fill ${f.number} of bin ${f.bin}, and the catches hold several seasons: give its season there (season). Until then it counts for none of them.`,
  "old-name": (f: Facts<"was" | "now">) =>
    `In the setup, ${f.was} is now called ${f.now}. The old name was understood; write the new one from now on.`,
};
