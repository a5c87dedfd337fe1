import { exitCodes } from "../../../src/cli/exit-codes.ts";
import { program } from "../../../src/cli/program.ts";
import { templateFiles } from "../../../src/report/template.ts";
import { endingsOf, standingOf } from "../../../src/results/caution.ts";
import { english } from "../../support/words.ts";
import { type CautionGroup, cautionGroups } from "./caution-list.ts";

const ends: Readonly<Record<keyof typeof exitCodes, string>> = {
  fine: "fine",
  cautions: "findings of the severity that `--fail-on` names, only when it is given",
  badInput: "bad input; nothing was written",
  internal: "a fault of the program; what it leaves standing is answered and written",
};

/** What goes into the files, the codes of findings, the options and exit codes of the command, as Markdown. */
export function reference(): string {
  return `# Reference

Made from the code by \`npm run api\`.

${demoted(templateFiles()["columns.md"] ?? "")}
## Findings

A result carries findings, each with a code, a severity, what it asks for, facts and a sentence. What to do is the strongest
ask of all findings about a bin and its fill. What asks to look first also says what ends it: the catches corrected, excluded
with a reason or checked (column \`checked\`), one more catch, or an answer under \`answered\` in the setup.

${cautionGroups().map(findingsOf).join("\n\n")}

## Exit codes

${rows(
  ["Exit code", "Meaning"],
  Object.entries(exitCodes).map(([name, code]) => [
    String(code),
    ends[name as keyof typeof exitCodes],
  ]),
)}

Answers go to standard output, everything else to standard error. \`--json\` prints results for machines. There are no colours
where there is no terminal.

## What is written, and over what

Files are written whole or not at all, and only over what evencatch wrote there itself, as long as nobody changed it:
\`evencatch-manifest.json\` beside them says what that is. Anything else in the way is refused by name; \`--replace\` writes over
it, but never over the catches and the setup. What an earlier report wrote and this one does not is removed.

## Numbers on the command line

Percentages are typed as such: \`--tolerance 3\` and \`--tolerance 3%\` are the same, 0.03 is refused because it may mean either;
a confidence may be 95, 95% or 0.95.

## Options

${helpTexts()}
`;
}

function findingsOf({ about, codes }: CautionGroup): string {
  return `### About ${about}\n\n${rows(
    ["Code", "Severity", "Asks", "Ended by"],
    codes.map(({ code }) => {
      const { severity, asks } = standingOf(code);
      return [`\`${code}\``, severity, asks, endingsOf(code).join(", ")];
    }),
  )}`;
}

function helpTexts(): string {
  const silent = { out: () => {}, err: () => {} };
  const plain = {} as Parameters<typeof program>[0]["outColors"];
  return program({ ...silent, outColors: plain, errColors: plain }, english(), () => {})
    .commands.map((each) => {
      each.configureHelp({ helpWidth: 100 });
      return `### evencatch ${each.name()}\n\n\`\`\`text\n${each.helpInformation().trimEnd()}\n\`\`\``;
    })
    .join("\n\n");
}

/** Headings one level lower. */
function demoted(markdown: string): string {
  return markdown.replace(/^#/gm, "##");
}

function rows(head: readonly string[], cells: readonly (readonly string[])[]): string {
  return [head, head.map(() => "---"), ...cells].map((row) => `| ${row.join(" | ")} |`).join("\n");
}
