import { roundedNumber } from "./cell-text.ts";
import type { Chart } from "./chart.ts";
import { chartPng } from "./chart-png.ts";
import type { MimeBundle } from "./notebook-file.ts";
import { type Table, tableHtml, tableOf, tableText } from "./table.ts";

/** Text that a viewer sets as Markdown. */
export class Markdown {
  readonly text: string;

  constructor(text: string) {
    this.text = text;
  }
}

/** Everything a viewer may want of a value. There is always a plain text, which the tests compare. */
export async function mimeBundle(value: unknown): Promise<MimeBundle> {
  if (typeof value === "string") {
    return { "text/plain": value };
  }
  if (value instanceof Markdown) {
    return { "text/markdown": value.text, "text/plain": value.text };
  }
  if (isChart(value)) {
    const chart = rounded(fittedInWidth(value), chartDigits);
    return {
      // The newest name that common viewers know; specs of the next version draw there as well.
      "application/vnd.vegalite.v5+json": chart,
      "image/png": await chartPng(chart),
      "text/plain": chartText(chart),
    };
  }
  const table = tableOf(value);
  return table === null ? { "text/plain": json(value) } : tableBundle(table);
}

function tableBundle(table: Table): MimeBundle {
  return { "text/html": tableHtml(table), "text/plain": tableText(table) };
}

/** More than a screen can show, fewer than machines differ in, so that a chart has the same bytes everywhere. */
const chartDigits = 10;

/** Vega 6.4 may put the title of a chart above its upper edge when the height is fitted too; a notebook has room below. */
function fittedInWidth(chart: Chart): Chart {
  const { type, ...how } = (chart.autosize ?? {}) as { readonly type?: unknown };
  return type === "fit" ? { ...chart, autosize: { ...how, type: "fit-x" } } : chart;
}

function isChart(value: unknown): value is Chart {
  const schema = (value as Partial<Chart> | null | undefined)?.$schema;
  return typeof schema === "string" && schema.includes("/vega-lite/");
}

function chartText({ title, description }: Chart): string {
  const words = [title, description].filter((text) => typeof text === "string");
  return ["Chart", ...words].join("\n");
}

function json(value: unknown): string {
  return JSON.stringify(rounded(value), null, 2) ?? String(value);
}

/** The same plain value with every number in it rounded. */
function rounded<T>(value: T, digits?: number): T {
  const text = JSON.stringify(value, (_, part: unknown) =>
    typeof part === "number" ? roundedNumber(part, digits) : part,
  );
  return text === undefined ? value : JSON.parse(text);
}
