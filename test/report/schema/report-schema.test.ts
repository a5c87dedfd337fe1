import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { analyse } from "../../../src/analysis/analyse.ts";
import { reportJson, reportSchemaVersion } from "../../../src/report/json.ts";
import { reportJsonSchema } from "../../../src/report/schema/report-schema.ts";
import { demo } from "../../support/demo.ts";
import { inventedFleet } from "../../support/fleets.ts";
import { present } from "../../support/reference.ts";
import { wordsBy } from "../../support/words.ts";
import { schemaFiles } from "../../tools/docs/schemas.ts";

const valid = new Ajv2020({ allowUnionTypes: true }).compile(reportJsonSchema());
const sha256 = "0".repeat(64);
const inputs = {
  catches: [{ name: "catches.csv", sheet: null, sha256 }],
  setup: { name: "setup.json", sheet: null, sha256 },
  library: null,
};
const meta = { title: null, setupSource: "farm/setup.json", version: "0", inputs };

type Json = { readonly [name: string]: Json } & { readonly length?: number };

async function reportOf(
  name: "season" | "first-morning" | "product-trial" | "three-bins",
  language: "en" | "de",
): Promise<Json> {
  const { log, setup } = await demo(name);
  return JSON.parse(reportJson(analyse(log, setup), meta, wordsBy[language]));
}

describe("the JSON Schema of report.json", () => {
  it.each(["season", "first-morning", "product-trial", "three-bins"] as const)(
    "takes the report of %s in both languages",
    async (name) => {
      for (const language of ["en", "de"] as const) {
        valid(await reportOf(name, language));
        expect(valid.errors).toBeNull();
      }
    },
  );

  it("takes the report of a fleet, and one that tells no files", () => {
    const fleet = analyse(inventedFleet(3, { meters: 12, products: ["wheat"], fills: () => 3 }));
    valid(JSON.parse(reportJson(fleet, { ...meta, inputs: null }, wordsBy.en)));
    expect(valid.errors).toBeNull();
  });

  it.each([
    ["another version", (report: Json) => ({ ...report, schemaVersion: 2 })],
    ["no files named", ({ inputs: _, ...report }: Json) => report],
    [
      "a folder in the name of a file",
      (report: Json) => ({
        ...report,
        inputs: { ...inputs, setup: { ...inputs.setup, name: "farm/setup.json" } },
      }),
    ],
    ["a meter without its delivery", (report: Json) => ({ ...report, meters: [{}] })],
    [
      "a text for a number",
      (report: Json) => ({
        ...report,
        options: { ...report.options, level: "0.95" },
      }),
    ],
  ] as const)("refuses %s", async (_, spoil) => {
    expect(valid(spoil(await reportOf("first-morning", "en")))).toBe(false);
  });

  it("lists every name that a report, a meter and its answers have", async () => {
    const schema = schemaOf(reportJsonSchema());
    const meterSchema = schemaOf(schema.$defs).meter;
    const report = await reportOf("season", "en");
    expect(Object.keys(report).filter((name) => !(name in schemaOf(schema.properties)))).toEqual(
      [],
    );
    const meter = present(Object.values(present(report.meters))[0]);
    expect(
      Object.keys(meter).filter((name) => !(name in schemaOf(schemaOf(meterSchema).properties))),
    ).toEqual([]);
  });

  it("has the version that reports have", async () => {
    expect((await reportOf("first-morning", "en")).schemaVersion).toBe(reportSchemaVersion);
  });
});

function schemaOf(part: unknown): Readonly<Record<string, unknown>> {
  return part as Readonly<Record<string, unknown>>;
}

describe("the schemas of the package", () => {
  it.each(Object.entries(schemaFiles()))(
    "%s is what the library says, by `npm run api`",
    (name, text) => {
      expect(readFileSync(new URL(`../../../schema/${name}`, import.meta.url), "utf8")).toBe(text);
      expect(JSON.parse(text).$id).toBe(name);
      expect(() => new Ajv2020({ allowUnionTypes: true }).compile(JSON.parse(text))).not.toThrow();
    },
  );
});
