import * as z from "zod";
import type { Path } from "./path.ts";

/** One field of a file of ours. A path with [] stands for every entry of a list. */
export interface SetupField {
  readonly path: string;
  readonly type: string;
  readonly description: string;
  /** As JSON holds it. */
  readonly example: unknown;
}

/** What a schema of ours says of the files it reads. */
export interface SchemaGuide {
  /** The same as JSON Schema. */
  readonly json: () => Readonly<Record<string, unknown>>;
  /** Every field, in the order of a full file. */
  readonly fields: () => readonly SetupField[];
  /** Keys that may stand at a path, of whatever kind. */
  readonly keysAt: (path: Path) => readonly string[];
}

/** @internal */
type Node = z.core.JSONSchema.JSONSchema;

/**
 * The guide to a schema, made when it is first asked for: a file without faults never needs it.
 *
 * @internal
 */
export function guideTo(schema: z.ZodType): SchemaGuide {
  let whole: Node | null = null;
  let fields: readonly SetupField[] | null = null;
  const node = () => {
    whole ??= nodesOf(schema);
    return whole;
  };
  return {
    json: () => nodesOf(schema),
    fields: () => {
      fields ??= fieldsIn(node(), "");
      return fields;
    },
    keysAt: (path) => {
      const found = path.reduce<Node>(
        (at, step) => (typeof step === "number" ? listedIn(at) : partsOf(at)[String(step)]) ?? {},
        node(),
      );
      return Object.keys(partsOf(found));
    },
  };
}

function nodesOf(schema: z.ZodType): Node {
  return z.toJSONSchema(schema, {
    io: "input",
    // What zod itself calls examples is of the value a schema makes; ours is of what stands in the file.
    override: ({ jsonSchema }) => {
      const { example } = jsonSchema;
      if (example !== undefined) jsonSchema.examples = [example];
      delete jsonSchema.example;
    },
  });
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

/** JSON Schema also knows lists of schemas, and true for anything; ours have neither. */
function isNode(schema: Node["items"]): schema is Node {
  return typeof schema === "object" && !Array.isArray(schema);
}
