import type { FileCautionFacts } from "../../results/caution-facts/file.ts";
import type { cautionsFile as templates } from "../en/cautions-file.ts";
import type { Format } from "../format.ts";
import type { CautionSentences } from "./caution-sentences.ts";
import { divisionStep } from "./division-step.ts";

/** What file and setup give away. A code that is not here carries no figures: its facts go to the sentence as they are. */
export function cautionsFileSayings(
  format: Format,
  { labels, ...say }: typeof templates,
): CautionSentences<FileCautionFacts> {
  return {
    ...say,
    "catch-far-from-fellows": ({ timesMedian }) =>
      say["catch-far-from-fellows"](format.plain(timesMedian)),
    "unit-looks-wrong": ({ unit, medianKgPerTurn, medianCatchKg }) =>
      say["unit-looks-wrong"]({
        unit,
        mass: format.value(medianCatchKg, "mass"),
        delivery: format.value(medianKgPerTurn, "delivery"),
      }),
    "newest-fill-left-out": ({ leftOutFill }, { fill }) =>
      say["newest-fill-left-out"]({ leftOutFill, fill }),
    "turns-from-area": ({ catches, lowest, highest, assumed }) => {
      const turns = (perHectare: number) =>
        format.plain(perHectare / format.convert(1, "area", 1), 4);
      const [from, to] = [turns(lowest), turns(highest)];
      return say["turns-from-area"]({
        catches,
        turns: from === to ? from : format.range(from, to),
        area: format.unit("area", 1),
        assumed,
      });
    },
    "turns-all-equal": ({ turns, tareShare }) =>
      say["turns-all-equal"]({
        turns: format.plain(turns),
        tare: tareShare === null ? null : format.percent(tareShare),
      }),
    "division-read-from-digits": (facts) => {
      const step = divisionStep(facts, format);
      return facts.different === 1
        ? labels.weightsAlike(step)
        : say["division-read-from-digits"](step);
    },
    "needs-rows": ({ questions }) =>
      say["needs-rows"](format.list(questions.map((name) => labels.question(name)))),
    "library-lends": ({ file, spreads, scatters, assumedFactor }) =>
      spreads + scatters === 0
        ? labels.libraryLendsNothing(file)
        : say["library-lends"]({ file, spreads, scatters, factor: format.plain(assumedFactor, 2) }),
    "setup-name-not-caught": ({ what, name, instead }, { bin }) =>
      what === "bin"
        ? labels.binNotCaught({ name, instead })
        : say["setup-name-not-caught"]({ name, instead, bin }),
    "setup-key-not-caught": (facts, { bin }) => say["setup-key-not-caught"]({ ...facts, bin }),
    "setup-season-missing": ({ number }, { bin }) => say["setup-season-missing"]({ number, bin }),
  };
}
