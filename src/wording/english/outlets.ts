import type { Outlet, OutletGrade, Outlets } from "../../questions/outlets.ts";
import type { Format } from "../format.ts";
import { degrees } from "./counted.ts";

export type OutletsWords = ReturnType<typeof englishOutlets>;

/** Everything said about how evenly outlets deliver. */
export function englishOutlets(format: Format) {
  const level = ({ options }: Outlets) => format.percent(options.level, 0);
  const variation = (result: Outlets): string => {
    const { value, interval } = result.coefficientOfVariation;
    if (interval === null) return format.percent(value);
    const range =
      interval.upper === null
        ? `${format.percent(interval.lower ?? 0)} or more`
        : `${format.percent(interval.lower ?? 0)} to ${format.percent(interval.upper)}`;
    return `${format.percent(value)} (${level(result)} interval ${range})`;
  };
  const centre = ({ band }: Outlets) =>
    band.about === "target" ? "the target of an outlet" : "the mean of the outlets";

  return {
    heading: "Outlet to outlet",
    sentence: (result: Outlets): string =>
      `Bin ${result.bin} (${result.product}), fill ${result.fill}: ${result.input.outlets} outlets differ with a coefficient of variation of ${variation(result)}${result.grade === null ? "" : `, graded ${gradeWords[result.grade.found]}`}.`,
    grade: ({ grade }: Outlets): string | null =>
      grade === null || grade.atBest === grade.atWorst
        ? null
        : `With so many outlets caught, the grade may be anything from ${gradeWords[grade.atBest]} to ${gradeWords[grade.atWorst]}.`,
    grades:
      "Grades: below 5 % excellent, to 10 % very good, to 15 % acceptable, above that not acceptable.",
    band: (result: Outlets): string => {
      const outside = result.outlets.filter(({ insideBand }) => !insideBand);
      return outside.length === 0
        ? `All outlets lie within ${format.plusMinus(result.options.band)} of ${centre(result)}.`
        : `${outside.length} of ${result.input.outlets} outlets ${outside.length === 1 ? "lies" : "lie"} more than ${format.percent(result.options.band)} off ${centre(result)}: ${format.list(outside.map(({ outlet }) => outlet))}.`;
    },
    catchScatter: ({ catchScatter }: Outlets): string =>
      catchScatter === null
        ? "How catches of one outlet repeat is not known: each was caught once. Differences between outlets are not catch scatter, but they hold some of it."
        : `Catches of one and the same outlet repeat to ${format.percent(catchScatter.relative)} (catches of ${format.plain(catchScatter.turns)} turns, ${degrees(catchScatter.df, format)}). That is catch scatter, another thing than the difference between outlets.`,
    detail: "Outlets in figures",
    table: {
      caption: "Delivery of each outlet",
      outlet: "Outlet",
      catches: "Catches",
      turns: "Turns",
      delivery: (unit: string) => `Delivery (${unit})`,
      off: "Off the centre",
      inside: "Within the band",
      yes: "yes",
      no: "no",
    },
    chart: {
      title: (result: Outlets) => `Outlet to outlet, bin ${result.bin}`,
      description: (result: Outlets) =>
        `Delivery of ${result.input.outlets} outlets against ${centre(result)}, with the band of ${format.plusMinus(result.options.band)}. ${result.outlets
          .map(({ outlet, relative }) => `${outlet}: ${format.signedPercent(relative)}`)
          .join("; ")}.`,
      outlet: "Outlet",
      off: ({ band }: Outlets): string =>
        band.about === "target" ? "Off the target (%)" : "Off the mean (%)",
      band: (band: number) => format.plusMinus(band),
      point: ({ outlet, relative, deliveryKgPerTurn }: Outlet) =>
        `Outlet ${outlet}: ${format.value(deliveryKgPerTurn, "delivery")}, ${format.signedPercent(relative)}`,
    },
  };
}

const gradeWords: Readonly<Record<OutletGrade, string>> = {
  excellent: "excellent",
  "very good": "very good",
  acceptable: "acceptable",
  "not acceptable": "not acceptable",
};
