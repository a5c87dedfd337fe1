import axe, { type AxeResults } from "axe-core";
import type { Page } from "playwright-core";

/** Serious and critical findings of axe-core, one line each; empty when there are none. */
export async function seriousFindings(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  const results = await page.evaluate(() =>
    (window as unknown as { axe: { run(): Promise<AxeResults> } }).axe.run(),
  );
  return results.violations
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html} ${node.failureSummary}`));
}
