import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { type Analysis, analyse } from "../src/index.ts";
import { version } from "../src/version.ts";
import { citation, type ReferenceKey, references } from "../src/wording/references.ts";
import { csv, logOf } from "./support/catch-files.ts";
import { root } from "./support/compiler.ts";
import { english, german } from "./support/words.ts";
import { checked } from "./tools/docs/methods/checked.ts";
import { type Demo, readDemo } from "./tools/docs/methods/demo.ts";
import { chapters, methodsDocument } from "./tools/docs/methods/document.ts";
import { methodsPage } from "./tools/docs/methods/page.ts";
import { percent, readStudies } from "./tools/docs/methods/studies.ts";

const textOf = (path: string) => readFileSync(join(root, path), "utf8");
let demo: Demo;

beforeAll(async () => {
  demo = await readDemo();
});

describe("the document of methods", () => {
  it("is what studies and code say now (`npm run methods` writes it anew)", () => {
    const markdown = methodsDocument(readStudies(), demo);
    expect(textOf("reports/methods.md")).toBe(markdown);
    expect(textOf("reports/methods.html")).toBe(methodsPage(markdown));
  });

  it("works its examples out to nine digits at least beside the library", () => {
    const figures = chapters.flatMap(({ example }) => example?.(demo).figures ?? []);
    expect(figures.length).toBeGreaterThanOrEqual(6);
    for (const { name, byHand, inLibrary } of figures)
      expect(Math.abs(byHand / inLibrary - 1), name).toBeLessThan(2e-9);
  });

  it("fetches nothing and runs nothing", () => {
    const html = textOf("reports/methods.html");
    expect(html).not.toMatch(/<(script|link|img|iframe)\b|\bsrc=|url\(/i);
    expect(html.match(/<math/g)?.length).toBeGreaterThan(30);
  });

  it("refuses a figure that its study does not have", () => {
    expect(() => percent(undefined)).toThrow("missing from its study");
    expect(percent(0.5, 0.25)).toBe("25.0 % to 50.0 %");
  });
});

describe("a source that is said to be held", () => {
  it.each(Object.entries(checked))("%s is named by what holds it, %s", (key, path) => {
    expect(existsSync(join(root, path))).toBe(true);
    const [name = ""] = citation(key as ReferenceKey).split(/[ /]/);
    const standard = { JCGM: "GUM" }[name] ?? name;
    expect(textOf(path)).toMatch(new RegExp(`${standard}|R \\d\\.\\d|webr|limma`, "i"));
  });
});

describe("the paragraph that a report offers", () => {
  const clean = (analysis: Analysis) => english().methods.paragraph(analysis, version);

  it("names the version, and each source it cites once, in the order of the alphabet", () => {
    const { text, references: listed } = clean(demo.season);
    expect(text).toContain(`evencatch ${version}`);
    expect(listed).toEqual([...new Set(listed)].toSorted((a, b) => a.localeCompare(b, "en")));
    const cited = (Object.keys(references) as ReferenceKey[]).filter((key) =>
      text.includes(citation(key)),
    );
    expect(cited.map((key) => references[key] as string).toSorted()).toEqual(
      [...listed].toSorted(),
    );
  });

  it("tells of no method that the report did not use", async () => {
    expect(clean(demo.season).text).toContain("moved");
    const oneMorning = clean(demo.threeBins).text;
    for (const absent of ["moved", "next fill", "Products", "Among many"])
      expect(oneMorning).not.toContain(absent);
    const alone = await logOf(csv("turns,net_kg", "20,6.02", "20,5.91", "20,6.1"));
    expect(clean(analyse(alone, null, { borrow: "none" })).text).toContain("from each fill alone");
  });

  it("cites the same sources in German", () => {
    const { references: listed } = german().methods.paragraph(demo.season, version);
    expect(listed).toEqual(clean(demo.season).references);
  });
});

describe("how to cite it", () => {
  it("names the version of the package", () => {
    expect(textOf("CITATION.cff")).toContain(`version: ${version}\n`);
    expect(JSON.parse(textOf("codemeta.json")).version).toBe(version);
  });
});
