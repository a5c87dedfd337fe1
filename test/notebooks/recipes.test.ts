import { readFileSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import { createContext, runInContext } from "node:vm";
import Papa from "papaparse";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { analyse } from "../../src/analysis/analyse.ts";
import { readCatchesFile, readSetupFile } from "../../src/node.ts";
import { answerTables } from "../../src/report/answer-tables.ts";
import { demo } from "../support/command.ts";
import { root } from "../support/compiler.ts";
import { coreFile, pythonRunner, rRunner, runnerOr } from "../support/recipes.ts";
import { present } from "../support/reference.ts";
import { english } from "../support/words.ts";
import { codeBlocks, codeSpans } from "../tools/docs/markdown.ts";

type Tables = Readonly<Record<string, readonly Readonly<Record<string, unknown>>[]>>;

const season = [demo("season/catches.csv"), demo("season/setup.json")] as const;
let core = "";

beforeAll(async () => {
  core = await coreFile();
});
afterAll(() => rmSync(dirname(core), { recursive: true }));

/** What the library says of the same file. */
async function expected(): Promise<Tables> {
  const log = await readCatchesFile(season[0]);
  const setup = await readSetupFile(season[1]);
  const tables = answerTables(log, analyse(log, setup, { tolerance: 0.03 }), english(), setup);
  return JSON.parse(JSON.stringify(tables));
}

/**
 * The numbers of tables, to the last bit, and the texts. A file's row is its line, a frame's its place; what a data frame
 * calls missing is null.
 */
function plain(tables: Tables): Tables {
  const one = ([name, value]: readonly [string, unknown]) => [
    name,
    name === "row" ? null : value === "" ? null : value,
  ];
  return Object.fromEntries(
    Object.entries(tables)
      .filter(([, rows]) => rows.length > 0)
      .map(([name, rows]) => [
        name,
        rows.map((row) => Object.fromEntries(Object.entries(row).map(one))),
      ]),
  );
}

/** Where every column of a data frame stands in every row. */
function filled(tables: Tables, like: Tables): Tables {
  return Object.fromEntries(
    Object.entries(tables).map(([name, rows]) => {
      const columns = Object.keys(like[name]?.[0] ?? {});
      return [
        name,
        rows.map((row) =>
          Object.fromEntries(columns.map((column) => [column, row[column] ?? null])),
        ),
      ];
    }),
  );
}

/** An engine that has nothing but the language, as old as that of Debian's R. */
function bareEngine() {
  const bare = createContext(Object.create(null));
  for (const method of ["toSorted", "toReversed", "toSpliced", "with"])
    runInContext(`delete Array.prototype.${method}`, bare);
  runInContext(readFileSync(core, "utf8"), bare);
  const ask = (question: object) => {
    const text = JSON.stringify(JSON.stringify(question));
    return JSON.parse(runInContext(`evencatch.answerJson(${text})`, bare));
  };
  return { bare, ask };
}

describe("the script", () => {
  it("answers in an engine that has nothing but the language", () => {
    const { bare, ask } = bareEngine();
    const names: readonly string[] = runInContext("Object.keys(globalThis)", bare);
    expect(names.filter((name) => !name.startsWith("__zod"))).toEqual(["evencatch"]);
    const rows = [6.36, 6.48, 6.56].map((net_kg) => ({ turns: 20, net_kg }));
    const options = { scaleDivisionKg: 0.02, tolerance: 0.03 };
    const { tables } = ask({ rows, options });
    // Ratio of sums: 6.36 + 6.48 + 6.56 kg in 60 turns.
    expect(tables.delivery[0].value).toBe(19.4 / 60);
    expect(tables.decision[0].to_do).toBe("4 more catches of 20 turns");
    const german = ask({ rows, options: { ...options, language: "de" } }).tables;
    expect(german.decision[0].to_do).toMatch(/^4 weitere/);
    expect(ask({ rows: [{ turns: 20, net_kg: "x" }] }).error).toMatchObject({
      code: "bad-data",
      issues: [{ column: "net_kg", received: "x" }],
    });
    expect(ask({ rows, options: { language: "fr" } }).error.code).toBe("bad-option");
  });

  it("says of a season there what it says here", async () => {
    const rows = Papa.parse(readFileSync(season[0], "utf8"), {
      header: true,
      skipEmptyLines: true,
    });
    const setup = JSON.parse(readFileSync(season[1], "utf8"));
    const { tables } = bareEngine().ask({ rows: rows.data, setup, options: { tolerance: 0.03 } });
    expect(plain(tables)).toEqual(plain(await expected()));
  });

  it("is one file without modules", () => {
    const text = readFileSync(core, "utf8");
    expect(text).toContain("var evencatch=");
    expect(text).not.toMatch(/\brequire\(|\bimport\(|\bprocess\./);
    expect(text).toContain("MIT License");
  });
});

/** Numbers as texts, since jsonlite prints fifteen digits at most. */
const toJson = `exact <- function(x) if (is.double(x)) ifelse(is.na(x), NA, sprintf("=%.17g", x)) else x
cat(jsonlite::toJSON(lapply(answer, function(table) { table[] <- lapply(table, exact); table }), na = "null"))`;
const fromJson = (text: string): Tables =>
  JSON.parse(text, (_, value) =>
    typeof value === "string" && value.startsWith("=") ? Number(value.slice(1)) : value,
  );

describe("the recipe in R", () => {
  for (const engine of ["node", "V8"]) {
    const packages = engine === "V8" ? ["jsonlite", "V8"] : ["jsonlite"];
    it(`says what the library says, through ${engine}`, async ({ skip }) => {
      const r = runnerOr(rRunner(packages), skip, engine === "V8");
      const said: Tables = fromJson(
        r.run(`catches <- read.csv("${season[0]}", check.names = FALSE)
answer <- evencatch(catches, "${season[1]}", list(tolerance = 0.03), core, "${engine}")
${toJson}`),
      );
      const truth = plain(await expected());
      expect(plain(filled(said, truth))).toEqual(truth);
    });

    it(`refuses with every problem, through ${engine}`, ({ skip }) => {
      const r = runnerOr(rRunner(packages), skip, engine === "V8");
      const message = r.run(`cat(tryCatch(
  evencatch(data.frame(turns = c(20, NA), net_kg = c("x", "6.1")), core = core, engine = "${engine}"),
  error = conditionMessage))`);
      expect(message).toMatch(/^catches\.json: 2 problems\n/);
    });
  }

  it("takes setup as a list, times as R has them, letters of any language", ({ skip }) => {
    const r = runnerOr(rRunner(["jsonlite"]), skip);
    const [decision, taken, refused] = JSON.parse(
      r.run(`catches <- data.frame(bin = "Säule ≥1", product = factor("Raps"), fill = 1L, catch = 1:3, turns = 20,
  net_kg = c(6.36, 6.48, 6.56), taken_at = as.POSIXct("2026-03-24 06:20", tz = "UTC"))
answer <- evencatch(catches, list(tolerance_percent = 3), core = core, engine = "node")
cat(jsonlite::toJSON(list(answer$decision, answer$catches$taken_at,
  tryCatch(evencatch(catches, list(tolerance = 3), core = core, engine = "node"), error = conditionMessage))))`),
    );
    expect(decision).toMatchObject([{ bin: "Säule ≥1", product: "Raps", tolerance: 0.03 }]);
    expect(taken).toEqual(Array(3).fill("2026-03-24T06:20"));
    expect(refused[0]).toMatch(/setup\.json/);
  });
});

describe("the recipe in Python", () => {
  const print = `import json
def records(frame): return frame.astype(object).where(frame.notna(), None).to_dict("records")
print(json.dumps({name: records(frame) for name, frame in answer.items()}))`;

  it("says what the library says", async ({ skip }) => {
    const python = runnerOr(pythonRunner(), skip);
    const said: Tables = JSON.parse(
      python.run(`answer = evencatch(pandas.read_csv("${season[0]}"), "${season[1]}", {"tolerance": 0.03}, core)
${print}`),
    );
    const truth = plain(await expected());
    expect(plain(filled(said, truth))).toEqual(truth);
  });

  it("speaks to an engine inside Python by eval and call", ({ skip }) => {
    const python = runnerOr(pythonRunner(), skip);
    const printed = python.run(`import json, subprocess
class Engine:
    def eval(self, code): self.code = code
    def call(self, name, text):
        program = self.code + f";process.stdout.write({name}({json.dumps(text)}))"
        return subprocess.run(["node", "-"], input=program, capture_output=True, encoding="utf-8", check=True).stdout
catches = pandas.DataFrame({"turns": 20, "net_kg": [6.36, 6.48, 6.56]})
print(evencatch(catches, core=core, engine=Engine())["delivery"].value[0])`);
    expect(Number(printed)).toBe(19.4 / 60);
  });

  it("refuses with every problem; times and gaps are those of pandas", ({ skip }) => {
    const python = runnerOr(pythonRunner(), skip);
    const printed =
      python.run(`frame = pandas.DataFrame({"turns": [20, None], "net_kg": ["x", "6.1"]})
try: evencatch(frame, core=core)
except EvencatchError as error: print(error.code, len(error.issues))
frame = pandas.DataFrame({"bin": "Säule ≥1", "product": "Raps", "fill": 1, "catch": [1, 2, 3], "turns": 20, "net_kg": [6.36, 6.48, 6.56],
  "taken_at": pandas.Timestamp("2026-03-24 06:20"), "meter_rpm": [40, None, 41]})
answer = evencatch(frame, {"tolerance_percent": 3}, core=core)
print(answer["catches"].taken_at[0], answer["catches"].meter_rpm.isna().sum(), answer["decision"].bin[0])`);
    expect(printed.trim().split("\n")).toEqual(["bad-data 2", "2026-03-24T06:20 1 Säule ≥1"]);
  });
});

describe("the examples of the guide", () => {
  const guide = readFileSync(join(root, "notebooks", "recipes", "README.md"), "utf8");
  const [rExample, pythonExample] = codeBlocks(guide).filter(({ language }) => language !== "");
  const code = (block: string) =>
    block
      .split("\n")
      .filter((line) => !/^(?:source|from evencatch|import|#>)/.test(line))
      .join("\n")
      .replace("evencatch(catches,", "evencatch(catches, core = core,");
  const said = (block: string) => [...block.matchAll(/^#> ?(.*)$/gm)].map(([, line]) => line);

  it("print what stands below them: R", ({ skip }) => {
    const r = runnerOr(rRunner(["jsonlite"]), skip);
    const block = present(rExample).code;
    expect(r.run(code(block)).trimEnd().split("\n")).toEqual(said(block));
  });

  it("print what stands below them: Python", ({ skip }) => {
    const python = runnerOr(pythonRunner(), skip);
    const block = present(pythonExample).code;
    expect(python.run(code(block)).trimEnd().split("\n")).toEqual(said(block));
  });

  it("and its list of tables is whole", async () => {
    const names = [...guide.matchAll(/^\| (`.*?) +\|/gm)].flatMap(([, cell = ""]) =>
      codeSpans(cell),
    );
    expect(names.sort()).toEqual(Object.keys(await expected()).sort());
  });
});
