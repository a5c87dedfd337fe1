/** A question that nobody asks, as small as one can be: the heaviest catch of the newest fill. Its own files by path. */
export const ownFiles: Readonly<Record<string, string>> = {
  "questions/heaviest-catch.ts": `import type { MeterModel } from "../model/model.ts";
import type { Caution } from "../results/caution.ts";

export interface HeaviestCatch {
  readonly kg: number;
  readonly cautions: readonly Caution[];
}

export function heaviestCatch({ fills }: MeterModel): HeaviestCatch {
  return { kg: Math.max(...(fills.at(-1)?.catches ?? []).map(({ netKg }) => netKg)), cautions: [] };
}
`,
  "wording/en/heaviest-catch.ts": `export const heaviestCatch = {
  heading: "The heaviest catch",
  sentence: (mass: string) => \`The heaviest catch weighs \${mass}.\`,
};
`,
  "wording/de/heaviest-catch.ts": `import type { heaviestCatch as english } from "../en/heaviest-catch.ts";

export const heaviestCatch: typeof english = {
  heading: "Die schwerste Probe",
  sentence: (mass) => \`Die schwerste Probe wiegt \${mass}.\`,
};
`,
  "wording/sayings/heaviest-catch.ts": `import type { HeaviestCatch } from "../../questions/heaviest-catch.ts";
import type { heaviestCatch as templates } from "../en/heaviest-catch.ts";
import type { Format } from "../format.ts";

export function heaviestCatchSayings(format: Format, { heading, ...say }: typeof templates) {
  return { heading, sentence: ({ kg }: HeaviestCatch) => say.sentence(format.value(kg, "mass")) };
}
`,
  "report/sections/heaviest-catch.ts": `import type { HeaviestCatch } from "../../questions/heaviest-catch.ts";
import type { Words } from "../../wording/words.ts";
import { blocks, paragraph } from "../blocks.ts";
import type { Block } from "../document.ts";

export function heaviestCatchSection(result: HeaviestCatch, words: Words): readonly Block[] {
  return blocks(paragraph(words.heaviestCatch.sentence(result), "lead"));
}
`,
};

/** A line that a file needs besides, put before the first line that holds `before`. */
export interface Line {
  readonly file: string;
  readonly before: string;
  readonly text: string;
}

/** The lines by layer: where a layer holds its questions as a list, one; where it imports them by name, that import too. */
export const lines: readonly Line[] = [
  line("results/question.ts", '{ name: "outlets"', '{ name: "heaviestCatch", answer: "wanted" },'),
  line(
    "analysis/analyse.ts",
    "import { type Outlets,",
    'import { type HeaviestCatch, heaviestCatch } from "../questions/heaviest-catch.ts";',
  ),
  line(
    "analysis/analyse.ts",
    "readonly outlets: Outlets",
    "readonly heaviestCatch: HeaviestCatch | null;",
  ),
  line(
    "analysis/analyse.ts",
    'outlets: ask("outlets"',
    'heaviestCatch: ask("heaviestCatch", () => heaviestCatch(meter)),',
  ),
  line(
    "wording/words.ts",
    "import { outletsSayings",
    'import { heaviestCatchSayings } from "./sayings/heaviest-catch.ts";',
  ),
  line(
    "wording/words.ts",
    "outlets: outletsSayings",
    "heaviestCatch: heaviestCatchSayings(format, say.heaviestCatch),",
  ),
  line(
    "wording/en/english.ts",
    "export { outlets }",
    'export { heaviestCatch } from "./heaviest-catch.ts";',
  ),
  line("wording/en/questions.ts", "outlets:", 'heaviestCatch: "The heaviest catch",'),
  line(
    "wording/de/german.ts",
    "export { outlets }",
    'export { heaviestCatch } from "./heaviest-catch.ts";',
  ),
  line("wording/de/questions.ts", "outlets:", 'heaviestCatch: "Die schwerste Probe",'),
  line(
    "report/question-sections.ts",
    "import { outletsSection",
    'import { heaviestCatchSection } from "./sections/heaviest-catch.ts";',
  ),
  line(
    "report/question-sections.ts",
    "outlets: {",
    'heaviestCatch: { shown: "open", blocks: heaviestCatchSection },',
  ),
];

function line(file: string, before: string, text: string): Line {
  return { file, before, text };
}
