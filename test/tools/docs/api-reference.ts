import { docComment, type Slot } from "./doc-comment.ts";
import {
  type EntryName,
  entryNames,
  type Kind,
  type PublicName,
  publicNames,
} from "./public-api.ts";

/** What each entry is for, in the order of the reference. */
const purposes: Readonly<Record<EntryName, string>> = {
  evencatch:
    "Reading, the model, questions, charts and reports. Touches no file, so it runs in a browser too.",
  "evencatch/node": "Reading files from disk.",
  "evencatch/light": "One call a question, on turns and masses as a program has them.",
  "evencatch/distributions": "Tails and quantiles of distributions.",
  "evencatch/statistics":
    "The methods behind the answers, under their standard names, on plain numbers. They know nothing of bins and catches.",
  "evencatch/en":
    "How everything is said in English, for `wordsIn`. Loaded alone, it brings no other language.",
  "evencatch/de": "The same in German.",
  "evencatch/frames":
    "Catches and results as data frames and back. Needs the optional package danfojs-node.",
  "evencatch/pool":
    "Totals of logs too long for memory, and the SQL that makes them in a database of one's own. Needs the optional package @duckdb/node-api.",
};

const parts: readonly { readonly title: string; readonly kinds: readonly Kind[] }[] = [
  { title: "Functions", kinds: ["function"] },
  { title: "Constants", kinds: ["constant"] },
  { title: "Classes", kinds: ["class"] },
];

/**
 * Every name that can be imported with its doc comment, as Markdown. Functions with their signature; of types, whose parts
 * an editor shows, what they are.
 *
 * @param folder  declarations as the compiler writes them, in which every type is spelled out
 */
export function apiReference(folder: string): string {
  return [
    "# Everything that can be imported",
    "Made from the doc comments by `npm run api`. Numbers carry their unit in the name or in the text; fractions are\nfractions, never percent.",
    ...entryNames.flatMap((entry) => {
      const names = publicNames(folder, entry, ".d.ts");
      return [
        `## ${entry}`,
        purposes[entry],
        ...parts.flatMap(({ title, kinds }) => partOf(entry, title, namesOf(names, kinds))),
        ...typesOf(entry, namesOf(names, ["interface", "type"])),
      ];
    }),
  ]
    .join("\n\n")
    .concat("\n");
}

function namesOf(names: readonly PublicName[], kinds: readonly Kind[]): readonly PublicName[] {
  return names.filter(({ kind }) => kinds.includes(kind));
}

function partOf(entry: EntryName, title: string, names: readonly PublicName[]): readonly string[] {
  return names.length === 0
    ? []
    : [`### ${title} of ${entry}`, ...names.map((name) => nameText(name, "####"))];
}

function typesOf(entry: EntryName, types: readonly PublicName[]): readonly string[] {
  if (types.length === 0) return [];
  const lines = types.map(({ name, doc }) => {
    const { description } = docComment(doc);
    return description === "" ? `- \`${name}\`` : `- \`${name}\`: ${item(description)}`;
  });
  return [`### Types of ${entry}`, lines.join("\n")];
}

function nameText({ name, doc, declarations }: PublicName, mark: string): string {
  const { description, slots } = docComment(doc);
  return [
    `${mark} ${name}`,
    `\`\`\`ts\n${declarations.map(signature).join("\n")}\n\`\`\``,
    ...(description === "" ? [] : [escaped(description)]),
    ...(slots.length === 0 ? [] : [slots.map(slotText).join("\n")]),
  ].join("\n\n");
}

/** Without what only the compiler needs: `export declare`, and from where it takes a type that is not imported. */
function signature(declaration: string): string {
  return declaration
    .replace(/^export (?:declare )?/, "")
    .replace(/import\("[^"]*"\)\./g, "")
    .replace(/^ {4}/gm, "  ");
}

function slotText({ name, text }: Slot): string {
  if (name === "example") return `\n\`\`\`ts\n${text}\n\`\`\``;
  if (name === "param") {
    const [, parameter = "", rest = ""] = /^(\S+)\s*(.*)$/s.exec(text) ?? [];
    return `- \`${parameter}\`: ${item(rest)}`;
  }
  return `- **${name.toLowerCase()}** ${item(text)}`;
}

function item(text: string): string {
  return escaped(text).replaceAll("\n", "\n  ");
}

/** Text that Markdown leaves as it is; code in backticks is left alone anyway. */
function escaped(text: string): string {
  return text
    .split(/(`[^`]*`)/)
    .map((part, at) =>
      at % 2 === 1 ? part : part.replace(/[*\\]/g, "\\$&").replaceAll("<", "&lt;"),
    )
    .join("")
    .replace(/^([-+#>]|\d+\.)(?=\s)/gm, "\\$1");
}
