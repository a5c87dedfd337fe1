import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type Node, parseSync, Visitor } from "oxc-parser";
import { root } from "../../support/compiler.ts";

/** A sentence or paragraph that holds figures, and where it stands. */
export interface Passage {
  /** "README.md", "notebooks/01-a-season.ipynb", "src/wording/en/help.ts". */
  readonly place: string;
  readonly text: string;
  /** Figures that the place itself works out beside the text: what a notebook's cells hold. */
  readonly beside: ReadonlySet<string>;
}

/** Digits, with their marks; not those inside a name, a date or a version. */
const number = /(?<![\w./#-])\d+(?:[.,:]\d+)*(?![\w-])/g;

export interface Figure {
  readonly figure: string;
  readonly at: number;
}

export function figuresIn(text: string): readonly Figure[] {
  return [...text.matchAll(number)].map(({ 0: figure, index }) => ({ figure, at: index }));
}

const read = (path: string) => readFileSync(join(root, path), "utf8");
const none: ReadonlySet<string> = new Set();

/** Prose alone: without code, what links lead to, and marks of a heading or list. */
function proseOf(markdown: string): readonly string[] {
  return markdown
    .replace(/^```.*?^```$/gms, "")
    .replace(/`[^`\n]*`|\]\([^)]*\)/g, " ")
    .split(/\n\s*\n|\n(?=\s*[-|]|\d\. )/)
    .map((paragraph) =>
      paragraph
        .replace(/^\s*\d\.\s/, "")
        .replace(/\s+/g, " ")
        .trim(),
    )
    .filter((paragraph) => figuresIn(paragraph).length > 0);
}

function ofReadme(): readonly Passage[] {
  return proseOf(read("README.md")).map((text) => ({ place: "README.md", text, beside: none }));
}

interface Cell {
  readonly cell_type: string;
  readonly source: readonly string[];
  readonly outputs?: readonly object[];
}

function ofNotebooks(): readonly Passage[] {
  return readdirSync(join(root, "notebooks"))
    .filter((name) => name.endsWith(".ipynb"))
    .flatMap((name) => {
      const { cells } = JSON.parse(read(`notebooks/${name}`)) as { cells: readonly Cell[] };
      const beside = new Set(
        cells
          .filter(({ cell_type }) => cell_type === "code")
          .flatMap(({ source, outputs }) =>
            figuresIn(`${source.join("")}\n${JSON.stringify(outputs)}`.replaceAll("\\n", "\n")),
          )
          .map(({ figure }) => figure),
      );
      return cells
        .filter(({ cell_type }) => cell_type === "markdown")
        .flatMap(({ source }) => proseOf(source.join("")))
        .map((text) => ({ place: `notebooks/${name}`, text, beside }));
    });
}

const wordFolders = ["src/wording/en", "src/wording/de", "src/errors/en"];

function ofSentences(): readonly Passage[] {
  return wordFolders.flatMap((folder) =>
    readdirSync(join(root, folder), { encoding: "utf8" })
      .sort()
      .flatMap((name) =>
        textsOf(read(`${folder}/${name}`))
          .filter((text) => figuresIn(text).length > 0)
          .map((text) => ({ place: `${folder}/${name}`, text, beside: none })),
      ),
  );
}

/** Every text of a file of templates, with # for what facts fill in. */
export function textsOf(code: string): readonly string[] {
  const texts: string[] = [];
  const keys = new Set<Node>();
  new Visitor({
    Property: ({ key }) => keys.add(key),
    Literal: (node) => {
      if (typeof node.value === "string" && !keys.has(node)) texts.push(node.value);
    },
    TemplateLiteral: ({ quasis }) => {
      texts.push(quasis.map(({ value }) => value.cooked ?? value.raw).join("#"));
    },
  }).visit(parseSync("words.ts", code).program);
  return texts;
}

/** Every passage with a figure in it: of the README, of the notebooks' prose, and of the sentences of every language. */
export function passages(): readonly Passage[] {
  return [...ofReadme(), ...ofNotebooks(), ...ofSentences()];
}
