import { describe, expect, it } from "vitest";
import * as z from "zod";
import { checkSetup } from "../../src/data/read-setup.ts";
import { type JsonValue, setupFields } from "../../src/data/setup-fields.ts";
import { setupSchema } from "../../src/data/setup-schema.ts";

interface JsonSchema {
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly items?: JsonSchema;
  readonly oneOf?: readonly JsonSchema[];
  readonly anyOf?: readonly JsonSchema[];
}

/** Parts of a quantity or a span stand in the example of their field, not in the list. */
const parts = ["value", "unit", "standard_uncertainty", "from", "to"];

function pathsOf(schema: JsonSchema, path: string): readonly string[] {
  const variants = schema.oneOf ?? (schema.items === undefined ? schema.anyOf : undefined);
  if (variants?.some((variant) => variant.properties !== undefined)) {
    return variants.flatMap((variant) => pathsOf(variant, path));
  }
  if (schema.items?.properties !== undefined) return pathsOf(schema.items, `${path}[]`);
  const keys = Object.keys(schema.properties ?? {});
  if (keys.length === 0 || keys.every((key) => parts.includes(key))) return [path];
  return keys.flatMap((key) =>
    pathsOf(schema.properties?.[key] ?? {}, path === "" ? key : `${path}.${key}`),
  );
}

describe("the list of setup fields", () => {
  it("is that of the schema, field for field", () => {
    const schema = z.toJSONSchema(setupSchema, { io: "input", unrepresentable: "any" });
    const inSchema = new Set(pathsOf(schema as JsonSchema, ""));
    expect(new Set(setupFields.map(({ path }) => path))).toEqual(inSchema);
  });

  it.each([
    ["ground-wheel", "linear"],
    ["motor", "quadratic"],
  ])("makes a setup from its own examples, with a %s and a %s response", (drive, response) => {
    const check = checkSetup(fileOf(setupWith({}, drive, response)));
    expect(check.ok ? [] : check.issues.map(({ text }) => text)).toEqual([]);
  });

  it.each(setupFields)("says where $path is wrong", ({ path, description }) => {
    const drive = /motor/.test(description) ? "motor" : "ground-wheel";
    const response = /quadratic;/.test(description) ? "quadratic" : "linear";
    const check = checkSetup(fileOf(setupWith({ [path]: { wrong: [] } }, drive, response)));
    const columns = check.ok ? [] : check.issues.map(({ column }) => column ?? "");
    const at = path.replaceAll("[]", "[0]");
    expect(columns.filter((column) => column.startsWith(at))).not.toEqual([]);
    expect(columns.filter((column) => !column.startsWith(at))).toEqual([]);
  });
});

function fileOf(setup: unknown) {
  return { name: "setup.json", text: JSON.stringify(setup) };
}

/** Every field at its example, save those of other kinds of drive and response and those that are given. */
function setupWith(
  given: Readonly<Record<string, JsonValue>>,
  drive: string,
  response: string,
): unknown {
  const kinds: Readonly<Record<string, JsonValue>> = {
    "bins[].drive.kind": drive,
    "bins[].money.response.kind": response,
    ...given,
  };
  const fits = (description: string) =>
    (/\((ground-wheel|motor)\)/.exec(description)?.[1] ?? drive) === drive &&
    (/\((linear|quadratic);/.exec(description)?.[1] ?? response) === response;
  return setupFields
    .filter(({ description }) => fits(description))
    .reduce<unknown>(
      (whole, { path, example }) => placed(whole, path.split("."), kinds[path] ?? example),
      {},
    );
}

function placed(whole: unknown, [step, ...rest]: readonly string[], value: JsonValue): unknown {
  if (step === undefined) return value;
  const here = (whole ?? {}) as Readonly<Record<string, unknown>>;
  const key = step.replace("[]", "");
  if (key === step) return { ...here, [key]: placed(here[key], rest, value) };
  const [entry] = (here[key] ?? []) as readonly unknown[];
  return { ...here, [key]: [placed(entry, rest, value)] };
}
