import { at } from "../../../src/errors/at.ts";
import { chapters } from "./chapters.ts";
import { claimed, type Run, type Section, tolerance, type Verdict } from "./claims.ts";
import { sectionTable } from "./markdown.ts";
import { errorOfShare, level } from "./outcomes.ts";

/** The study as a page, one string a line. */
export function lendingPage({ replicates, seed }: Run, sections: readonly Section[]): string[] {
  const all = claimed(sections).map(({ cell }) => cell.verdict);
  const count = (verdict: Verdict) => all.filter((one) => one === verdict).length;
  const error = errorOfShare(level, replicates).toFixed(3);
  return [
    "# What bins lend each other of their spread: stated against happened",
    "",
    `Simulated through the public functions, ${replicates} logs a situation, seed ${seed}; made by \`npm run study:lending\`.`,
    "Base case: 0.3 kg/turn, catches of 20 turns, three a fill. Typical catch scatter 1.5 %, typical fill-to-fill spread 3 %; each meter's own",
    "differs from that by a lognormal factor, 95 % of meters within 2.7 either way (standard deviation of the logarithm 0.5, which is",
    "what the library takes for granted). The others are drawn like the meter itself and never centred on it.",
    "",
    `Every band is nominally ${100 * level} %; ± after a share is its median half-width. Two standard errors of a share near ${level} are ${error.replace(/^0/, "")}.`,
    `Of ${all.length} figures with a claim ${count("met")} meet it, ${count("within the tolerance")} lie beside it by at most ${String(tolerance).replace(/^0/, "")}, the tolerance declared for the`,
    `simulation, and ${count("missed")} miss it (in bold). What has no claim is a weakness, or stands beside for comparison.`,
    ...chapters.flatMap(({ section, title, before, after }, i) => [
      "",
      `## ${i + 1}. ${title}`,
      "",
      ...before,
      "",
      ...sectionTable(sectionOf(section, sections)),
      ...(after.length > 0 ? ["", ...after] : []),
    ]),
  ];
}

function sectionOf(name: string, sections: readonly Section[]): Section {
  return at(
    sections.filter((section) => section.name === name),
    0,
  );
}
