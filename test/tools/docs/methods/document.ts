import { version } from "../../../../src/version.ts";
import { citation, type ReferenceKey, references } from "../../../../src/wording/references.ts";
import type { Chapter, Example } from "./chapter.ts";
import { checked } from "./checked.ts";
import type { Demo } from "./demo.ts";
import { fieldAndTrial } from "./field-and-trial.ts";
import { oneFill } from "./one-fill.ts";
import { overFills } from "./season.ts";
import { commands, type Studies } from "./studies.ts";

export const chapters: readonly Chapter[] = [...oneFill, ...overFills, ...fieldAndTrial];

/** Digits to which a figure by hand and the library's agree, at most fifteen. */
function commonDigits(a: number, b: number): number {
  return a === b ? 15 : Math.min(15, Math.floor(-Math.log10(Math.abs(a / b - 1))));
}

/** The methods of a report, in its order, with what simulation found, as Markdown. */
export function methodsDocument(studies: Studies, demo: Demo): string {
  const cited = new Set(chapters.flatMap(({ sources }) => sources));
  const keys = (Object.keys(references) as ReferenceKey[])
    .filter((key) => cited.has(key))
    .sort((a, b) => references[a].localeCompare(references[b], "en"));
  return `# Methods

Made by \`npm run methods\` with evencatch ${version}: every figure of a simulation is read from the file named beside it, and every
example is worked out anew. Meters deliver mass per turn; a fill is one filling of a bin, a catch the mass of some turns.

${chapters.map((chapter, i) => chapterText(chapter, i + 1, studies, demo)).join("\n\n")}

## The studies, run again

| file | command |
| --- | --- |
${Object.entries(commands)
  .map(([file, command]) => `| [reports/${file}.json](${file}.json) | \`${command}\` |`)
  .join("\n")}

Seeds and numbers of simulated seasons stand in each file.

## Sources

${keys.map((key) => `- ${references[key]} ${standing(key)}`).join("\n")}
`;
}

function standing(key: ReferenceKey): string {
  const by = checked[key];
  return by === undefined ? "_Named from memory._" : `_Held by [${by}](../${by})._`;
}

function chapterText(
  { title, asks, method, assumes, evidence, sources, example }: Chapter,
  place: number,
  studies: Studies,
  demo: Demo,
): string {
  const found = evidence(studies);
  const parts = [
    `## ${place}. ${title}`,
    `_${asks}_`,
    method,
    `**Rests on.** ${assumes.join(" ")}`,
    found.length === 0
      ? null
      : `**Simulated.** ${found.map(({ said, file }) => `${said} ([${file}](${file}.json))`).join(" ")}`,
    example === undefined ? null : exampleText(example(demo)),
    `Sources: ${sources.map(citation).join("; ")}.`,
  ];
  return parts.filter((part) => part !== null).join("\n\n");
}

function exampleText({ text, figures }: Example): string {
  const rows = figures.map(
    ({ name, byHand, inLibrary }) =>
      `| ${name} | ${byHand.toPrecision(9)} | ${inLibrary.toPrecision(9)} | ${commonDigits(byHand, inLibrary)} |`,
  );
  return [
    `**Example.** ${text}`,
    "",
    "| figure | worked out here | in the library | digits alike |",
    "| --- | --- | --- | --- |",
    ...rows,
  ].join("\n");
}
