import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { checkSetup, readSetup } from "../../../src/data/read-setup.ts";
import { setupFields, setupJsonSchema } from "../../../src/data/setup/json-schema.ts";

interface Kinds {
  readonly drive: string;
  readonly response: string;
}

const kinds: readonly Kinds[] = [
  { drive: "ground-wheel", response: "linear" },
  { drive: "motor", response: "quadratic" },
];

describe("the JSON Schema of a setup", () => {
  const valid = new Ajv2020({ allowUnionTypes: true }).compile(setupJsonSchema());

  it.each(["season", "first-morning", "product-trial"])("takes the setup of %s", (name) => {
    const path = new URL(`../../../data-demo/${name}/setup.json`, import.meta.url);
    valid(JSON.parse(readFileSync(path, "utf8")));
    expect(valid.errors).toBeNull();
  });

  it.each([
    ["a key that is not there", { scale: { divison: { value: 10, unit: "g" } } }],
    ["a percentage out of range", { tolerance_percent: 0 }],
    ["a text for a number", { confidence_percent: "95" }],
    ["a quantity without its unit", { scale: { division: { value: 10 } } }],
    ["an entry that names no bin", { bins: [{ product: "wheat" }] }],
    ["a key of another kind", { bins: [{ bin: 1, drive: { kind: "motor", ratio: 1 } }] }],
    ["an answer to no finding", { answered: [{ code: "rain", bin: 1, note: "x" }] }],
  ])("refuses %s, as the reader does", (_, setup) => {
    expect(valid(setup)).toBe(false);
    expect(checkSetup(fileOf(setup)).ok).toBe(false);
  });

  it("is what the package ships as schema/setup.schema.json, by `npm run api`", () => {
    const path = new URL("../../../schema/setup.schema.json", import.meta.url);
    const { $id, ...shipped } = JSON.parse(readFileSync(path, "utf8"));
    expect($id).toBe("setup.schema.json");
    expect(shipped).toEqual(setupJsonSchema());
  });

  it("is made anew for everyone who asks", () => {
    expect(setupJsonSchema()).toEqual(setupJsonSchema());
    expect(setupJsonSchema()).not.toBe(setupJsonSchema());
  });
});

describe("the list of setup fields", () => {
  it("says of each what it is and gives an example", () => {
    for (const { type, description, example } of setupFields()) {
      expect(type).not.toBe("");
      expect(description).not.toBe("");
      expect(example).toBeDefined();
    }
    expect(new Set(setupFields().map(({ path }) => path)).size).toBe(setupFields().length);
  });

  it.each(kinds)(
    "makes a setup from its own examples, with a $drive and a $response response",
    (kind) => {
      const check = checkSetup(fileOf(setupWith({}, kind)));
      expect(check.ok ? [] : check.issues.map(({ text }) => text)).toEqual([]);
    },
  );

  it("has examples that one drill can have: each step puts out what label or law lets it", () => {
    const examples = setupWith({}, { drive: "ground-wheel", response: "linear" });
    const [bin] = readSetup(fileOf(examples)).bins;
    const [lowest, target, highest] = [bin?.lowestRate, bin?.targetRate, bin?.highestRate].map(
      (rate) => (rate?.kind === "mass" ? rate.kgPerHectare : Number.NaN),
    );
    const drive = bin?.drive?.kind === "ground-wheel" ? bin.drive : null;
    expect(drive?.steps).toContain(drive?.ratio);
    expect(drive?.stepNames).toHaveLength(drive?.steps?.length ?? 0);
    // The target is put out at the ratio set now, and a rate goes with the turns of the meter, so with the ratio.
    const rates = drive?.steps?.map((step) => ((target ?? 0) * step) / (drive.ratio ?? 0)) ?? [];
    expect(rates.length).toBeGreaterThan(1);
    expect(rates).toEqual(rates.toSorted((one, other) => one - other));
    expect(Math.min(...rates)).toBeGreaterThan(lowest ?? 0);
    expect(Math.max(...rates)).toBeLessThan(highest ?? 0);
  });

  it.each(setupFields())("says where $path is wrong", ({ path, description }) => {
    const check = checkSetup(fileOf(setupWith({ [path]: { wrong: [] } }, kindIn(description))));
    const columns = check.ok ? [] : check.issues.map(({ column }) => column ?? "");
    const at = path.replaceAll("[]", "[0]");
    expect(columns.filter((column) => column.startsWith(at))).not.toEqual([]);
    expect(columns.filter((column) => !column.startsWith(at))).toEqual([]);
  });

  it.each(setupFields())(
    "says that $path must be given exactly when it must",
    ({ path, description }) => {
      const at = path.replaceAll("[]", "[0]");
      const without = setupWith({ [path]: undefined }, kindIn(description));
      const check = checkSetup(fileOf(without));
      const missing = check.ok ? [] : check.issues.filter(({ column }) => column === at);
      expect(missing.length > 0).toBe(/must be given/.test(description));
    },
  );
});

/** Kinds of drive and response that a field with this description goes with. */
function kindIn(description: string): Kinds {
  return {
    drive: /\(motor\)/.test(description) ? "motor" : "ground-wheel",
    response: /\(quadratic;/.test(description) ? "quadratic" : "linear",
  };
}

function fileOf(setup: unknown) {
  return { name: "setup.json", text: JSON.stringify(setup) };
}

/** Every field at its example, save those of other kinds of drive and response and those that are given. */
function setupWith(given: Readonly<Record<string, unknown>>, { drive, response }: Kinds): unknown {
  const values: Readonly<Record<string, unknown>> = {
    "bins[].drive.kind": drive,
    "bins[].money.response.kind": response,
    ...given,
  };
  const fits = (description: string) =>
    (/\((ground-wheel|motor)\)/.exec(description)?.[1] ?? drive) === drive &&
    (/\((linear|quadratic);/.exec(description)?.[1] ?? response) === response;
  return setupFields()
    .filter(({ description }) => fits(description))
    .reduce<unknown>(
      (whole, { path, example }) =>
        placed(whole, path.split("."), Object.hasOwn(values, path) ? values[path] : example),
      {},
    );
}

function placed(whole: unknown, [step, ...rest]: readonly string[], value: unknown): unknown {
  if (step === undefined) return value;
  const here = (whole ?? {}) as Readonly<Record<string, unknown>>;
  const key = step.replace("[]", "");
  if (key === step) return { ...here, [key]: placed(here[key], rest, value) };
  const [entry] = (here[key] ?? []) as readonly unknown[];
  return { ...here, [key]: [placed(entry, rest, value)] };
}
