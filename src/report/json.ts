import type { Analysis } from "../analysis/analyse.ts";
import type { Caution } from "../results/caution.ts";
import type { Words } from "../wording/words.ts";
import { baseName } from "./provenance.ts";
import type { ReportMeta } from "./report.ts";
import { cautionSentence } from "./sections/cautions.ts";

/** Version of the shape of report.json, which its JSON Schema describes; another one where a name goes or changes its meaning. */
export const reportSchemaVersion = 1;

/**
 * An analysis as JSON, unrounded, with its sentence beside every caution. Every number of the report is in it.
 *
 * @throws RangeError when a number is not finite: JSON would turn it into null without a word
 */
export function reportJson(analysis: Analysis, meta: ReportMeta, words: Words): string {
  const whole = {
    schemaVersion: reportSchemaVersion,
    evencatch: meta.version,
    title: meta.title,
    setup: meta.setupSource === null ? null : baseName(meta.setupSource),
    inputs: meta.inputs ?? null,
    ...analysis,
    source: baseName(analysis.source),
  };
  return `${resultJson(whole, words)}\n`;
}

/**
 * Any results as JSON, unrounded, with its sentence beside every caution.
 *
 * @throws RangeError when a number is not finite
 */
export function resultJson(results: object, words: Words): string {
  return JSON.stringify(results, (key, value) => prepare(key, value, words), 2);
}

function prepare(key: string, value: unknown, words: Words): unknown {
  if (typeof value === "number" && !Number.isFinite(value))
    throw new RangeError(`${key} is ${value}; a result must hold finite numbers or null.`);
  if (key === "cautions" && Array.isArray(value))
    return value.map((found: Caution) => ({ ...found, text: cautionSentence(found, words) }));
  return value;
}
