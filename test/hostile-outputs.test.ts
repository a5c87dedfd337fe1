import { readFile } from "node:fs/promises";
import { join } from "node:path";
import MarkdownIt from "markdown-it";
import { describe, expect } from "vitest";
import { browserTest, noFindings, type Open } from "./support/browser.ts";
import { command, filesIn, fileWith, inFolder } from "./support/command.ts";

/** Names that act wherever they are taken for anything but a text; each tells of itself. */
const names = [
  '<img src=x onerror="caught(1)">',
  "</script><script>caught(2)</script>",
  '"><svg onload=caught(3)>',
  "]]></style><iframe srcdoc='<script>parent.caught(4)</script>'>",
  "[a](javascript:caught(5))",
  "{{caught(6)}}<%=caught(6)%>",
  "'+caught(7)+'",
  "<!--<script>caught(8)",
];
const name = (i: number) => names[i % names.length] ?? "";
const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`;

const header = [
  "bin",
  "product",
  "fill",
  "catch",
  "turns",
  "net_kg",
  "operator",
  "note",
  "outlet",
  name(0),
];
const catches = (outlet: (n: number) => string) =>
  [1, 2, 3, 4].flatMap((fill) =>
    [1, 2, 3].map((n) =>
      [
        ...[name(fill), name(fill + 1)].map(quoted),
        ...[1, n, 20, 5.8 + 0.05 * ((n * fill) % 4) + (n === 3 && fill === 2 ? 1 : 0)],
        ...[name(2), name(3), outlet(n), name(4)].map(quoted),
      ].join(","),
    ),
  );
const log = (outlet: (n: number) => string) =>
  [header.map(quoted).join(","), ...catches(outlet)].join("\n");
const setup = JSON.stringify({
  title: name(5),
  tolerance_percent: 3,
  cart: {
    working_width: { value: 9, unit: "m" },
    speed: { from: { value: 7, unit: "km/h" }, to: { value: 9, unit: "km/h" } },
  },
  bins: [1, 2, 3, 4].map((fill) => ({
    bin: name(fill),
    product: name(fill + 1),
    target_rate: { value: 120, unit: "kg/ha" },
    drive: {
      kind: "motor",
      meter_speed: {
        from: { value: 20, unit: "turns/min" },
        to: { value: 120, unit: "turns/min" },
      },
    },
  })),
});

/** Elements and attributes that only data could have brought in. */
const broughtIn = `[...document.querySelectorAll("*")].flatMap((one) => [
  ...(["IFRAME", "OBJECT", "EMBED"].includes(one.tagName) || one.getAttribute("src") === "x" ? [one.tagName] : []),
  ...[...one.attributes].filter(({ name, value }) => /^on/.test(name) || /^\\s*javascript:/i.test(value)).map(({ name }) => name),
])`;

/** Opened as it is, and without its policy, which is only the second wall: nothing of the data's may run either way. */
async function isInert(open: Open, html: string, what: string) {
  const detector = "<script>window.caught = (n) => console.error('caught ' + n)</script>";
  const withoutPolicy = html.replace(/<meta http-equiv="Content-Security-Policy"[^>]*>/i, "");
  const { page, findings } = await open(html);
  expect({ what, ...findings }).toEqual({ what, ...noFindings });
  expect({ what, found: await page.evaluate(broughtIn) }).toEqual({ what, found: [] });
  const bare = await open(detector + withoutPolicy);
  const said = bare.findings.consoleMessages.filter((text) => text.startsWith("caught"));
  expect({ what, said, requests: bare.findings.requests }).toEqual({
    what,
    said: [],
    requests: [],
  });
}

/** What a command wrote, as pages: each HTML file, all drawings in one, and Markdown as a site shows it that lets HTML through. */
async function written(folder: string, ...args: readonly string[]) {
  const { code, err } = await command(...args);
  if (code !== 0) throw new Error(err);
  const files = await filesIn(folder);
  const textsOf = (ending: string) =>
    Promise.all(
      files
        .filter((file) => file.endsWith(ending))
        .map((file) => readFile(join(folder, file), "utf8")),
    );
  const drawings = await textsOf(".svg");
  const papers = await textsOf(".md");
  const markdown = new MarkdownIt({ html: true });
  return [
    ...(await textsOf(".html")),
    ...(drawings.length === 0 ? [] : [`<!doctype html>${drawings.join("")}`]),
    ...papers.map((text) => `<!doctype html>${markdown.render(text)}`),
  ];
}

describe("names that act wherever they are no texts", () => {
  browserTest("a page that lets them act is caught", async (open) => {
    const html = `<!doctype html><title>x</title>${name(0)}`;
    await expect(isInert(open, html, "a careless page")).rejects.toThrow();
  });

  for (const [kind, args] of Object.entries({
    short: [],
    full: ["--edition", "full", "--charts", "svg"],
    interactive: ["--interactive", "--language", "de"],
  }))
    browserTest(`do nothing in the ${kind} report, its charts and its Markdown`, async (open) => {
      await inFolder(async (folder) => {
        const file = await fileWith(
          folder,
          "catches.csv",
          log(() => ""),
        );
        await fileWith(folder, "setup.json", setup);
        const out = join(folder, "out");
        const pages = await written(out, "report", file, "--out", out, "--compare", ...args);
        expect(pages.length).toBeGreaterThan(1);
        for (const page of pages) await isInert(open, page, kind);
      });
    });

  browserTest("do nothing on sheets, in a plan and on the page at the drill", async (open) => {
    await inFolder(async (folder) => {
      const file = await fileWith(
        folder,
        "catches.csv",
        log(() => ""),
      );
      const setupFile = await fileWith(folder, "setup.json", setup);
      for (const [what, ...args] of [
        ["sheets", "sheet", file, "--out", join(folder, "sheets")],
        ["plan", "plan", name(0), name(1), "--bin", name(2), "--out", join(folder, "plan")],
        ["page", "page", "--setup", setupFile, "--out", join(folder, "page", "page.html")],
      ] as const) {
        const out = join(folder, what);
        const pages = await written(out, ...args);
        expect(pages.length).toBeGreaterThan(0);
        for (const page of pages) await isInert(open, page, what);
      }
    });
  });
});
