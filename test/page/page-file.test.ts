import { beforeAll, describe, expect, it } from "vitest";
import { pageFile } from "../../src/page/page-file.ts";
import { zippedBytes } from "../support/zipped.ts";
import { type BundledPage, bundlePage } from "../tools/bundle-page.ts";

const bundles = new Map<string, BundledPage>();

beforeAll(async () => {
  for (const language of ["en", "de"] as const) bundles.set(language, await bundlePage(language));
});

function bundled(language: string): BundledPage {
  const found = bundles.get(language);
  if (found === undefined) throw new Error(`no page in ${language}`);
  return found;
}

/** Files that some of the page comes from. */
function filesOf(language: string): readonly string[] {
  return Object.values(bundled(language).metafile.outputs).flatMap(({ inputs }) =>
    Object.entries(inputs).flatMap(([file, { bytesInOutput }]) =>
      bytesInOutput > 0 ? [file] : [],
    ),
  );
}

function pageIn(language: string): string {
  return pageFile({
    language,
    title: "Page",
    noScript: "Scripts are off.",
    script: bundled(language).code,
    given: { units: "metric", setup: null },
  });
}

describe.each(["en", "de"])("the page in the language %s", (language) => {
  it("is no larger than a phone loads in a field", () => {
    const bytes = zippedBytes(pageIn(language));
    process.stderr.write(
      `  page, ${language}: ${pageIn(language).length} bytes, ${bytes} compressed, at most 150000\n`,
    );
    expect(bytes).toBeLessThanOrEqual(150_000);
  });

  it("carries no schema library, no charts, no workbooks and no data frames", () => {
    const packages = filesOf(language).flatMap(
      (file) => /node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(file)?.[1] ?? [],
    );
    expect([...new Set(packages)].sort()).toEqual([
      "@preact/signals",
      "@preact/signals-core",
      "idb",
      "papaparse",
      "preact",
      "simple-statistics",
    ]);
    expect(filesOf(language).filter((file) => file.startsWith("src/charts/"))).toEqual([]);
  });

  it("speaks one language", () => {
    const others = language === "en" ? /\/de\// : /\/en\//;
    expect(filesOf(language).filter((file) => others.test(file))).toEqual([]);
  });

  it("opens with the licences of all it contains", () => {
    const { code } = bundled(language);
    const head = code.slice(0, code.indexOf("*/"));
    for (const name of ["preact 1", "@preact/signals 2", "idb 8", "papaparse 5"])
      expect(head).toContain(name);
    expect(head).toContain("Permission is hereby granted");
  });

  it("names no address, and may load nothing", () => {
    const html = pageIn(language);
    const policy = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(html)?.[1] ?? "";
    expect(policy).toContain("default-src &#39;none&#39;");
    expect(policy).not.toMatch(/unsafe|https?:|\*/);
    expect(html).not.toMatch(/<[^>]*\s(style|on\w+)=/);
  });
});

describe("what a page is given", () => {
  it("cannot end its element", () => {
    const html = pageFile({
      language: "en",
      title: "</title><script>1</script>",
      noScript: "<b>",
      script: "0",
      given: { units: "us", setup: null, ...{ more: "</script><script>1</script>" } },
    });
    expect(html.match(/<script/g)).toHaveLength(2);
  });
});
