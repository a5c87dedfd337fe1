import { existsSync } from "node:fs";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, test } from "vitest";
import { chromiumPath, launchChromium } from "./chromium.ts";

/** All that a page did which it should not have done. Each list is empty for a good page. */
export interface Findings {
  readonly consoleMessages: string[];
  readonly pageErrors: string[];
  readonly policyViolations: string[];
  /** Every address asked for, except the page's own file. */
  readonly requests: string[];
}

export const noFindings: Findings = {
  consoleMessages: [],
  pageErrors: [],
  policyViolations: [],
  requests: [],
};

export interface Visit {
  readonly page: Page;
  readonly findings: Findings;
}

export interface Reader {
  readonly width?: number;
  readonly height?: number;
  readonly colorScheme?: "light" | "dark";
}

/** Opens HTML text from disk in a fresh browser context without network. */
export type Open = (html: string, reader?: Reader) => Promise<Visit>;

/**
 * A test that needs a browser. Where there is none it is skipped and says so; under CI that is a failure, since
 * there the browser is part of the agreement.
 */
export function browserTest(
  name: string,
  run: (open: Open, skip: (reason: string) => void) => Promise<void>,
): void {
  test(name, async (context) => {
    if (!existsSync(chromiumPath)) {
      const reason = `no chromium at ${chromiumPath}; set CHROMIUM to its path`;
      if (process.env.CI) throw new Error(reason);
      process.stderr.write(`skipped "${name}": ${reason}\n`);
      context.skip(reason);
    }
    const contexts: BrowserContext[] = [];
    const folder = await mkdtemp(join(tmpdir(), "evencatch-page-"));
    try {
      await run(
        (html, reader = {}) => visit(html, reader, folder, contexts),
        (reason) => context.skip(reason),
      );
    } finally {
      await Promise.all(contexts.map((opened) => opened.close()));
      await rm(folder, { recursive: true });
    }
  });
}

let shared: Promise<Browser> | null = null;

function browser(): Promise<Browser> {
  shared ??= launchChromium();
  return shared;
}

afterAll(async () => {
  await (await shared)?.close();
  shared = null;
});

async function visit(
  html: string,
  { width = 1280, height = 900, colorScheme = "light" }: Reader,
  folder: string,
  contexts: BrowserContext[],
): Promise<Visit> {
  const file = join(folder, `${contexts.length}.html`);
  await writeFile(file, html);
  const address = pathToFileURL(file).href;
  const context = await (await browser()).newContext({ viewport: { width, height }, colorScheme });
  contexts.push(context);
  await context.setOffline(true);
  const page = await context.newPage();
  const findings = await record(page, address);
  await page.goto(address, { waitUntil: "load" });
  // Violations are reported by tasks of their own, after the load event.
  await page.evaluate(() => new Promise((resolve) => setTimeout(resolve, 50)));
  return { page, findings };
}

async function record(page: Page, address: string): Promise<Findings> {
  const findings: Findings = {
    consoleMessages: [],
    pageErrors: [],
    policyViolations: [],
    requests: [],
  };
  page.on("console", (message) => findings.consoleMessages.push(message.text()));
  page.on("pageerror", (error) => findings.pageErrors.push(error.message));
  await page.exposeFunction("reportViolation", (text: string) => {
    findings.policyViolations.push(text);
  });
  // Runs before the page and outside its policy.
  await page.addInitScript(() => {
    document.addEventListener("securitypolicyviolation", (event) => {
      const report = (window as unknown as { reportViolation: (text: string) => void })
        .reportViolation;
      report(`${event.effectiveDirective} blocked ${event.blockedURI} ${event.sample}`);
    });
  });
  await page.route("**/*", (route) => {
    const requested = route.request().url();
    if (requested === address) return route.continue();
    findings.requests.push(requested);
    return route.abort();
  });
  return findings;
}
