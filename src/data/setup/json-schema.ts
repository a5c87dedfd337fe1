import * as z from "zod";
import type { Path } from "./path.ts";
import { setupSchema } from "./schema.ts";

/** One field of a setup file. A path with [] stands for every entry of a list. */
export interface SetupField {
  readonly path: string;
  readonly type: string;
  readonly description: string;
  /** As JSON holds it. */
  readonly example: unknown;
}

/**
 * What a setup file may hold, as JSON Schema (draft 2020-12), for editors and for programs that write setups. It does not
 * know what must hold between fields, nor every way to write a unit; checkSetup does.
 */
export function setupJsonSchema(): Readonly<Record<string, unknown>> {
  return nodes();
}

type Node = z.core.JSONSchema.JSONSchema;

function nodes(): Node {
  return z.toJSONSchema(setupSchema, {
    io: "input",
    // What zod itself calls examples is of the value a schema makes; ours is of what stands in the file.
    override: ({ jsonSchema }) => {
      const { example } = jsonSchema;
      if (example !== undefined) jsonSchema.examples = [example];
      delete jsonSchema.example;
    },
  });
}

/** Made when it is first asked for: a setup without faults never needs it. */
let whole: Node | null = null;

function wholeSchema(): Node {
  whole ??= nodes();
  return whole;
}

let fields: readonly SetupField[] | null = null;

/** Every field of a setup file, in the order of a full one. */
export function setupFields(): readonly SetupField[] {
  fields ??= fieldsIn(wholeSchema(), "");
  return fields;
}

/** Keys that may stand at a path of a setup file, of whatever kind. */
export function keysAt(path: Path): readonly string[] {
  const found = path.reduce<Node>(
    (node, step) => (typeof step === "number" ? listedIn(node) : partsOf(node)[String(step)]) ?? {},
    wholeSchema(),
  );
  return Object.keys(partsOf(found));
}

/** A field is what has an example; what lies above it only holds others. */
function fieldsIn(node: Node, path: string): readonly SetupField[] {
  const { title: type = "", description = "", examples = [] } = node;
  if (examples.length > 0) return [{ path, type, description, example: examples[0] }];
  const listed = listedIn(node);
  if (listed !== null) return fieldsIn(listed, `${path}[]`);
  return Object.entries(partsOf(node)).flatMap(([key, part]) =>
    fieldsIn(part, path === "" ? key : `${path}.${key}`),
  );
}

/** What each entry of a list may be; null: no list. */
function listedIn({ items }: Node): Node | null {
  return isNode(items) ? items : null;
}

/** What may stand in an object; one that comes in several kinds may hold what any of them may. */
function partsOf({ oneOf = [], properties = {} }: Node): Readonly<Record<string, Node>> {
  const own = Object.entries(properties).flatMap(([key, part]) =>
    isNode(part) ? [[key, part] as const] : [],
  );
  const ofKinds = oneOf.flatMap((kind) => Object.entries(partsOf(kind)));
  return Object.fromEntries([...own, ...ofKinds]);
}

/** JSON Schema also knows lists of schemas, and true for anything; a setup has neither. */
function isNode(schema: Node["items"]): schema is Node {
  return typeof schema === "object" && !Array.isArray(schema);
}
