import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { isDeepStrictEqual } from "node:util";
import Ajv, { type ValidateFunction } from "ajv";
import type { ChartSpec } from "../../src/charts/chart-spec.ts";
import { renderSvg } from "../../src/report/svg.ts";

let compiled: ValidateFunction | null = null;

function schemaCheck(): ValidateFunction {
  if (compiled !== null) return compiled;
  const path = createRequire(import.meta.url).resolve("vega-lite/vega-lite-schema.json");
  const ajv = new Ajv.default({ strict: false, validateFormats: false });
  // The schema names this format for colours; it has no rule of its own.
  ajv.addFormat("color-hex", true);
  compiled = ajv.compile(JSON.parse(readFileSync(path, "utf8")));
  return compiled;
}

/** What is wrong with a spec: against vega-lite's own schema, and what it warns of when drawn. Empty when sound. */
export async function faultsOf(spec: ChartSpec): Promise<string[]> {
  const faults: string[] = [];
  const check = schemaCheck();
  if (!check(spec)) {
    faults.push(...(check.errors ?? []).map((error) => `${error.instancePath} ${error.message}`));
  }
  const before = structuredClone(spec);
  await renderSvg(spec, { id: "checked", onWarning: (message) => faults.push(message) });
  // Sees symbols too, by which vega marks data it was given.
  if (!isDeepStrictEqual(spec, before)) faults.push("drawing changed the spec");
  for (const word of ["title", "description"]) {
    if (typeof spec[word] !== "string" || spec[word] === "") faults.push(`no ${word}`);
  }
  return faults;
}
