import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { type Comment, parseSync, type Statement } from "oxc-parser";

/** The doors of the package: the name in an import, and the file behind it, without its ending. */
export const entries = {
  evencatch: "index",
  "evencatch/node": "node",
  "evencatch/light": "light",
  "evencatch/statistics": "statistics",
  "evencatch/distributions": "distributions",
  "evencatch/en": "en",
  "evencatch/de": "de",
  "evencatch/frames": "frames",
  "evencatch/pool": "pool",
} as const;

export type EntryName = keyof typeof entries;

export const entryNames = Object.keys(entries) as readonly EntryName[];

export type Kind = "function" | "class" | "constant" | "interface" | "type";

/** A name that an entry exports, followed to where it is declared. */
export interface PublicName {
  readonly name: string;
  readonly kind: Kind;
  /** File of the declaration, relative to the folder that was read, without its ending. */
  readonly file: string;
  /** The doc comment without its stars; empty when there is none. */
  readonly doc: string;
  /** The text as it is written; several for an overloaded function. */
  readonly declarations: readonly string[];
}

/** Whether a name exists when the program runs. */
export function isValue({ kind }: PublicName): boolean {
  return kind !== "interface" && kind !== "type";
}

/** Source, or what the compiler made of it: the same exports, with every type spelled out. */
export type Ending = ".ts" | ".d.ts";

/** Everything an entry exports, sorted by name. */
export function publicNames(folder: string, entry: EntryName, ending: Ending): PublicName[] {
  const reader = new Reader(folder, ending);
  const file = entries[entry];
  return reader
    .exportsOf(file)
    .map((name) => reader.follow(file, name))
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}

/**
 * Types that a reader of the entries meets but cannot import by name: those in the declarations of the given names, and
 * so on. Sorted by name.
 */
export function typesBehind(
  folder: string,
  names: readonly PublicName[],
  ending: Ending,
): PublicName[] {
  const reader = new Reader(folder, ending);
  const key = ({ file, name }: Place) => `${file}#${name}`;
  const met = new Map(names.map((name) => [key(name), name]));
  const waiting = [...names];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    for (const type of reader.typesNamedIn(next)) {
      if (met.has(key(type))) continue;
      met.set(key(type), type);
      waiting.push(type);
    }
  }
  return [...met.values()]
    .filter((type) => !names.includes(type))
    .sort((a, b) => (key({ ...a, file: "" }) + a.file < key({ ...b, file: "" }) + b.file ? -1 : 1));
}

interface Place {
  readonly file: string;
  readonly name: string;
}

type Declaration = Omit<PublicName, "name" | "file">;

interface Module {
  readonly declared: ReadonlyMap<string, Declaration>;
  /** Names that come from elsewhere, whether exported again or not. */
  readonly borrowed: ReadonlyMap<string, Place>;
  readonly exported: readonly string[];
  /** Modules all of whose names it exports too. */
  readonly behind: readonly string[];
}

class Reader {
  readonly #folder: string;
  readonly #ending: Ending;
  readonly #modules = new Map<string, Module>();

  constructor(folder: string, ending: Ending) {
    this.#folder = folder;
    this.#ending = ending;
  }

  exportsOf(file: string): readonly string[] {
    const { exported, behind } = this.#module(file);
    return [...exported, ...behind.flatMap((other) => this.exportsOf(other))];
  }

  follow(file: string, name: string): PublicName {
    const { declared, borrowed, behind } = this.#module(file);
    const declaration = declared.get(name);
    if (declaration !== undefined) return { name, file, ...this.#withOptions(file, declaration) };
    const elsewhere = behind.find((other) => this.exportsOf(other).includes(name));
    const place = elsewhere === undefined ? borrowed.get(name) : { file: elsewhere, name };
    if (place === undefined) throw new Error(`${file} exports ${name} and does not say from where`);
    return { ...this.follow(place.file, place.name), name };
  }

  /** Options that are derived from a table of rules, as the interface a reader would write by hand. */
  #withOptions(file: string, declaration: Declaration): Declaration {
    const [text = ""] = declaration.declarations;
    const [derived, table] = /(?: extends|,) OptionsOf<typeof (\w+)>/.exec(text) ?? [];
    if (derived === undefined || table === undefined || this.#ending === ".ts") return declaration;
    const { doc, declarations } = this.follow(file, table);
    const options = (declarations[0] ?? "")
      .replace(/^[^{]*\{|\};?$/g, "")
      .replace(/^( +)(\w+): (?:import\("[^"]*"\)\.)?Option<(.*)>;$/gm, "$1readonly $2: $3;");
    return {
      ...declaration,
      doc: declaration.doc || doc,
      declarations: [text.replace(derived, "").replace(/\{\n?/, () => `{${options}`)],
    };
  }

  /** Names are looked for in the text, comments apart: a module knows no other thing by the name of one of its types. */
  typesNamedIn({ file, declarations }: PublicName): readonly PublicName[] {
    const { declared, borrowed } = this.#module(file);
    const code = declarations.join("\n").replace(/\/\*.*?\*\/|"(?:[^"\\]|\\.)*"/gs, "");
    return [...new Set(code.match(/\b[A-Z]\w*/g))]
      .filter((name) => declared.has(name) || borrowed.has(name))
      .map((name) => this.follow(file, name));
  }

  #module(file: string): Module {
    const known = this.#modules.get(file);
    if (known !== undefined) return known;
    const text = readFileSync(join(this.#folder, `${file}${this.#ending}`), "utf8");
    const read = readModule(text, file);
    this.#modules.set(file, read);
    return read;
  }
}

function readModule(text: string, file: string): Module {
  const { program, comments, errors } = parseSync(`${file}.ts`, text);
  if (errors[0] !== undefined) throw new Error(`${file}: ${errors[0].message}`);
  const declared = new Map<string, Declaration>();
  const borrowed = new Map<string, Place>();
  const exported: string[] = [];
  const behind: string[] = [];
  for (const statement of program.body) {
    const source = sourceOf(statement, file);
    if (statement.type === "ImportDeclaration" && source !== null) {
      for (const specifier of statement.specifiers)
        if (specifier.type === "ImportSpecifier")
          borrowed.set(specifier.local.name, { file: source, name: nameOf(specifier.imported) });
    } else if (statement.type === "ExportNamedDeclaration" && statement.declaration === null) {
      for (const specifier of statement.specifiers) {
        const [local, name] = [nameOf(specifier.local), nameOf(specifier.exported)];
        exported.push(name);
        if (source !== null) borrowed.set(name, { file: source, name: local });
      }
    } else if (statement.type === "ExportAllDeclaration") {
      if (statement.exported === null) {
        if (source !== "types") throw new Error(`${file}: what is public is named, one by one`);
        behind.push(source);
        continue;
      }
      const name = nameOf(statement.exported);
      const { start, end } = statement;
      const doc = docBefore(text, comments, start);
      declared.set(name, { kind: "constant", doc, declarations: [text.slice(start, end)] });
      exported.push(name);
    }
    for (const { name, kind, start, end } of declarationsIn(statement)) {
      const before = declared.get(name);
      declared.set(name, {
        kind,
        doc: before?.doc || docBefore(text, comments, statement.start),
        declarations: [...(before?.declarations ?? []), text.slice(start, end)],
      });
      if (statement.type === "ExportNamedDeclaration" && before === undefined) exported.push(name);
    }
  }
  return { declared, borrowed, exported, behind };
}

/** The module of ours that a statement takes something from. */
function sourceOf(statement: Statement, file: string): string | null {
  const source = "source" in statement ? statement.source : null;
  const request = source !== null && "value" in source ? String(source.value) : "";
  return request.startsWith(".")
    ? join(dirname(file), request.replace(/\.(?:d\.)?[tj]s$/, ""))
    : null;
}

function nameOf(node: { readonly type: string; readonly name?: string; readonly value?: string }) {
  return node.name ?? node.value ?? "";
}

interface Declared {
  readonly name: string;
  readonly kind: Kind;
  readonly start: number;
  readonly end: number;
}

function declarationsIn(statement: Statement): readonly Declared[] {
  const inner =
    statement.type === "ExportNamedDeclaration" && statement.declaration !== null
      ? statement.declaration
      : statement;
  const { start } = statement;
  switch (inner.type) {
    case "FunctionDeclaration":
    case "TSDeclareFunction": {
      // Without its body.
      const end = inner.body?.start ?? inner.end;
      return inner.id ? [{ name: inner.id.name, kind: "function", start, end }] : [];
    }
    case "ClassDeclaration":
      return inner.id ? [{ name: inner.id.name, kind: "class", start, end: inner.end }] : [];
    case "TSInterfaceDeclaration":
      return [{ name: inner.id.name, kind: "interface", start, end: inner.end }];
    case "TSTypeAliasDeclaration":
      return [{ name: inner.id.name, kind: "type", start, end: inner.end }];
    case "VariableDeclaration":
      return inner.declarations.flatMap(({ id }) =>
        id.type === "Identifier"
          ? [{ name: id.name, kind: "constant" as const, start, end: inner.end }]
          : [],
      );
    default:
      return [];
  }
}

/** The doc comment that ends where a statement begins. */
function docBefore(text: string, comments: readonly Comment[], start: number): string {
  const comment = comments.find(
    ({ type, value, end }) =>
      type === "Block" &&
      value.startsWith("*") &&
      end <= start &&
      text.slice(end, start).trim() === "",
  );
  return (comment?.value ?? "")
    .slice(1)
    .split("\n")
    .map((line) => line.replace(/^\s*\* ?/, "").trimEnd())
    .join("\n")
    .trim();
}
