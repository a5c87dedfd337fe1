import { appendFile, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readSetupFile } from "../../src/node.ts";
import { command, demo, filesIn, inFolder } from "../support/command.ts";
import { english } from "../support/words.ts";

describe("evencatch plan", () => {
  it("writes a sheet that only lacks its masses, the same for the same seed", async () => {
    await inFolder(async (folder) => {
      const { code, out } = await command("plan", "wheat", "pea", "--fills", "4", "--out", folder);
      expect(code).toBe(0);
      expect(out).toContain("2 products, 4 fills of each");
      const safety = english()
        .report.safety.strip.lines.map((line) => `- ${line}`)
        .join("\n");
      expect(out.startsWith(safety)).toBe(true);
      const toPrint = await readFile(join(folder, "catch-sheet.html"), "utf8");
      expect(toPrint.match(/<td[^>]*>(wheat|pea)</g)).toHaveLength(2 + 2 * 4 * 4);
      const sheet = await readFile(join(folder, "sheet.csv"), "utf8");
      const check = await command("check", join(folder, "sheet.csv"));
      expect(check.err).toContain("gross_kg");

      const again = ["plan", "wheat", "pea", "--fills", "4", "--out", folder];
      expect((await command(...again)).code).toBe(0);
      expect(await readFile(join(folder, "sheet.csv"), "utf8")).toBe(sheet);
      await command(...again, "--seed", "2");
      const other = await readFile(join(folder, "sheet.csv"), "utf8");
      expect(other).not.toBe(sheet);

      await appendFile(join(folder, "sheet.csv"), "a note of one's own\n");
      const refused = await command(...again);
      expect(refused.code).toBe(2);
      expect(refused.err).toContain("Changed since evencatch wrote them: sheet.csv.");
      expect(refused.err).toContain("--replace");
      expect(refused.out).toBe("");
      for (const option of ["--force", "--replace"])
        expect((await command(...again, option)).code).toBe(0);
      expect(await readFile(join(folder, "sheet.csv"), "utf8")).toBe(sheet);
    });
  });

  it("says that it needs two products, and how to name them", async () => {
    for (const [products, found] of [
      [[], "Found none."],
      [["wheat"], 'Found only "wheat".'],
    ] as const) {
      const { code, err, out } = await command("plan", ...products);
      expect([code, out]).toEqual([2, ""]);
      expect(err).toBe(
        `A trial needs two or more products to compare, such as: evencatch plan wheat barley. ${found}`,
      );
    }
    expect((await command("plan", "--help")).out).toContain("<product> <product>...");
  });

  it("names what is a default as one, and nothing that was chosen", async () => {
    const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, " ");
    const { out } = await command("plan", "wheat", "pea");
    expect(plain(out)).toContain(
      "Defaults, to be replaced by figures of your own: a difference of 5.0 % to be found; a spread between fills of 3.0 %; a catch scatter of 2.0 % at 20 turns; a confidence of 95 %; 5 fills of each product; catches of 20 and 40 turns; 2 catches of each kind.",
    );
    const flags = ["--difference", "4", "--spread", "2%", "--level", "90", "--fills", "6"];
    const more = ["--turns", "30", "--catches", "3", "--language", "de"];
    const chosen = await command("plan", "wheat", "pea", ...flags, ...more);
    expect(plain(chosen.out)).toContain(
      "Vorgaben, die Sie durch eigene Zahlen ersetzen können: eine Streuung der Proben von 2,0 % bei 20 Umdrehungen.",
    );
  });

  it("refuses turn levels that are none", async () => {
    const { code, err } = await command("plan", "wheat", "pea", "--turns", "20,many");
    expect(code).toBe(2);
    expect(err).toContain("above zero");
  });
});

describe("the setup that a plan writes", () => {
  const planned = (...flags: string[]) => ["plan", "wheat", "pea", "rye", ...flags];

  it("says that the catches are a trial, and how it is judged", async () => {
    await inFolder(async (folder) => {
      const flags = ["--fills", "4", "--margin", "3%", "--reference", "pea", "--level", "90%"];
      await command(...planned(...flags, "--spread-law", "common", "--out", folder));
      const setup = await readSetupFile(join(folder, "setup.json"));
      expect(setup).toMatchObject({
        confidence: 0.9,
        trial: {
          products: ["wheat", "pea", "rye"],
          blocks: "block",
          fills: 4,
          reference: "pea",
          equivalenceMargin: 0.03,
          spread: "common",
          order: null,
        },
      });
    });
  });

  it("names no blocks where none are to be compared within", async () => {
    await inFolder(async (folder) => {
      await command(...planned("--no-blocks", "--out", folder));
      const { trial } = await readSetupFile(join(folder, "setup.json"));
      expect(trial?.blocks).toBeNull();
    });
  });

  it("makes the report of the sheet, once filled in, one that opens with the trial", async () => {
    await inFolder(async (folder) => {
      const { err } = await command(...planned("--fills", "3", "--catches", "1", "--out", folder));
      const sheet = join(folder, "sheet.csv");
      expect(err).toContain(`evencatch report ${sheet}`);
      const text = await readFile(sheet, "utf8");
      const [header = "", ...rows] = text.trim().split(/\r?\n/);
      const names = header.split(",");
      const filled = rows.map((row, i) => {
        const cells = row.split(",");
        const at = (name: string) => names.indexOf(name);
        const turns = Number(cells[at("turns")]);
        const heavy = cells[at("product")] === "rye" ? 0.35 : 0.4;
        cells[at("gross_kg")] = (turns * heavy + 0.4 + 0.01 * ((i * 7) % 5)).toFixed(3);
        cells[at("tare_kg")] = "0.400";
        return cells.join(",");
      });
      await writeFile(sheet, [header, ...filled].join("\n"));
      const { code, out } = await command("report", sheet, "--out", join(folder, "report"));
      expect(code).toBe(0);
      expect(out.startsWith("3 products compared within 3 blocks (block): 9 fills")).toBe(true);
      expect(out).toContain("All 3 fills planned of each product are caught.");
      expect(out).not.toContain("To do");
    });
  });
});

describe("a plan from a log", () => {
  const from = ["--from", demo("planned-trial/catches.csv")];

  it("rests on what that says of spread and scatter, and says so", async () => {
    const { out, code } = await command("plan", "durum", "rye", "wheat treated", ...from);
    expect(code).toBe(0);
    expect(out).toContain("From catches.csv: fills of one product spread by");
    expect(out).toContain("There 3 of these products speak, with 15 fills.");
    expect(out).toContain("What its blocks share is taken out.");
    expect(out).not.toContain("Assumed");
    const german = await command("plan", "durum", "maize", ...from, "--language", "de");
    expect(german.out).toContain("Aus catches.csv: Füllungen eines Produkts");
  });

  it("lets a figure of one's own count before it", async () => {
    const { out } = await command("plan", "oats", "maize", ...from, "--spread", "2%");
    const plain = out.replace(/[\u00a0\u202f]/g, " ");
    expect(plain).toContain(". Assumed: fills of one product spread by 2.0 %");
    expect(plain).toContain(
      "None of these products is in it, so all 4 of it speak, with 20 fills.",
    );
  });
});

describe("evencatch report on a trial", () => {
  const trial = [
    "report",
    demo("product-trial/catches.csv"),
    "--setup",
    demo("product-trial/setup.json"),
  ];

  it("compares products where one bin held several, and writes tidy tables when asked", async () => {
    await inFolder(async (folder) => {
      const flags = ["--blocks", "day", "--margin", "2%", "--tables", "--out", folder];
      expect((await command(...trial, ...flags)).code).toBe(0);
      const { products } = JSON.parse(await readFile(join(folder, "report.json"), "utf8"));
      expect(products.comparison.kind).toBe("product-comparison");
      const files = await filesIn(join(folder, "tables"));
      for (const name of ["catches", "estimates", "products", "contrasts"])
        for (const kind of ["csv", "json", "md", "tex"]) expect(files).toContain(`${name}.${kind}`);
    });
  });

  it("leaves products alone in a season, or when told to", async () => {
    await inFolder(async (folder) => {
      await command(...trial, "--no-compare", "--out", folder);
      const { products } = JSON.parse(await readFile(join(folder, "report.json"), "utf8"));
      expect(products).toBeNull();
      const season = ["report", demo("season/catches.csv"), "--json", "--out", folder];
      expect(JSON.parse((await command(...season)).out).products).toBeNull();
      expect(JSON.parse((await command(...season, "--compare")).out).products).not.toBeNull();
    });
  });
});
