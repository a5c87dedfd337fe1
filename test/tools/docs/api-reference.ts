import { docComment, type Slot } from "./doc-comment.ts";
import {
  type EntryName,
  entryNames,
  isValue,
  type Kind,
  type PublicName,
  publicNames,
  typesBehind,
} from "./public-api.ts";

/** What each entry is for, in the order of the reference. */
const purposes: Readonly<Record<EntryName, string>> = {
  evencatch:
    "Reading, the model, questions, charts and reports. Touches no file, so it runs in a browser too.",
  "evencatch/node": "Reading files from disk.",
  "evencatch/statistics":
    "The methods behind the answers, under their standard names, on plain numbers. They know nothing of bins and catches.",
  "evencatch/frames":
    "Catches and results as data frames and back. Needs the optional package danfojs-node.",
};

const parts: readonly { readonly title: string; readonly kinds: readonly Kind[] }[] = [
  { title: "Functions", kinds: ["function"] },
  { title: "Constants", kinds: ["constant"] },
  { title: "Classes", kinds: ["class"] },
  { title: "Types", kinds: ["interface", "type"] },
];

/**
 * The reference of everything that can be imported, as Markdown.
 *
 * @param folder  declarations as the compiler writes them, in which every type is spelled out
 */
export function apiReference(folder: string): string {
  const byEntry = entryNames.map((entry) => ({
    entry,
    names: publicNames(folder, entry, ".d.ts"),
  }));
  const behind = typesBehind(
    folder,
    byEntry.flatMap(({ names }) => names),
    ".d.ts",
  );
  return [
    "# Everything that can be imported",
    "Made from the doc comments by `npm run api`. Numbers carry their unit in the name or in the text; fractions are\nfractions, never percent.",
    ...byEntry.flatMap(({ entry, names }) => [
      `## ${entry}`,
      purposes[entry],
      overview(names),
      ...parts.flatMap(({ title, kinds }) => partOf(entry, title, namesOf(names, kinds))),
    ]),
    "## Types behind them",
    "Parts of the types above. They have no import of their own; reach them through the type that holds them.",
    // Two files may use one name.
    ...behind.map((type) => nameText({ ...type, name: `${type.name} (${type.file})` }, "###")),
  ]
    .join("\n\n")
    .concat("\n");
}

function namesOf(names: readonly PublicName[], kinds: readonly Kind[]): readonly PublicName[] {
  return names.filter(({ kind }) => kinds.includes(kind));
}

function overview(names: readonly PublicName[]): string {
  const values = names.filter(isValue).map(({ name }) => `\`${name}\``);
  return values.join(" · ");
}

function partOf(entry: EntryName, title: string, names: readonly PublicName[]): readonly string[] {
  return names.length === 0
    ? []
    : [`### ${title} of ${entry}`, ...names.map((name) => nameText(name, "####"))];
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
