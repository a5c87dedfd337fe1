import { table } from "../study/support/markdown.ts";
import type { Mutant } from "./mutants.ts";
import { layers } from "./topics.ts";
import type { Fate } from "./watched.ts";

export interface Tried {
  readonly mutant: Mutant;
  readonly fate: Fate;
}

const isKilled = ({ fate }: Tried) => fate.is !== "survived";
const percent = (share: number) => `${(100 * share).toFixed(1)} %`;

/** Share of changes that a test noticed. */
export function scoreOf(tried: readonly Tried[]): number {
  return tried.filter(isKilled).length / tried.length;
}

/** The page: the score by layer, and every change that no test noticed. Without times, so that one seed gives one page. */
export function mutationPage(tried: readonly Tried[], seed: number): readonly string[] {
  const of = (layer: string) =>
    tried.filter(({ mutant }) => mutant.file.startsWith(`src/${layer}/`));
  const row = (name: string, some: readonly Tried[]) => [
    name,
    some.length,
    some.filter(isKilled).length,
    some.filter(({ fate }) => fate.is === "never ended").length,
    percent(scoreOf(some)),
  ];
  const survivors = tried.filter((one) => !isKilled(one));
  return [
    "# Would a test notice?",
    "",
    `\`npm run mutation -- --sample ${tried.length} --seed ${seed}\` wrote this page: ${tried.length} small changes of the code, one at a time, drawn in proportion to its lines. A change counts as noticed only where a test of the topic fails: one of the same name or folder, or one of the layers below that is at most two imports away (farther only where none is as near). Sample reports, notebooks, studies, the command, pages and charts do not count: what only they would notice has survived here.`,
    "",
    "Tests are written next where a sample shows that they are missing. A sample drawn anew, by another seed, therefore scores lower until that is done for it.",
    "",
    ...table(
      ["layer", "changes", "noticed", "of these, never ended", "score"],
      [
        ...layers.map((layer) =>
          of(layer).length > 0 ? row(layer, of(layer)) : [layer, 0, 0, 0, ""],
        ),
        row("**all**", tried),
      ],
    ),
    "",
    "## What no test noticed",
    "",
    survivors.length === 0
      ? "Nothing."
      : "Some of these change nothing that could be told from outside: a start value of a search, a limit that is never met, a test that only saves time.",
    "",
    ...(survivors.length === 0
      ? []
      : table(
          ["file", "line", "change"],
          survivors
            .map(({ mutant }) => mutant)
            .toSorted((a, b) => a.file.localeCompare(b.file, "en") || a.line - b.line)
            .map(({ file, line, change }) => [
              file,
              line,
              `\`${change.replaceAll("|", "\\\\|")}\``,
            ]),
        )),
  ];
}
