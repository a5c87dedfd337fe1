import { readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { describe, expect, it } from "vitest";
import { root } from "../support/compiler.ts";
import { digits, type Reference } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const shared = "test/reference/generate/recomputed/critical-values.R";

interface Recomputed extends Omit<Reference, "data"> {
  readonly data: Readonly<Record<string, number | readonly number[]>>;
  readonly generator: string;
}

const read = (path: string) => readFileSync(join(root, path), "utf8");
const files = readdirSync(join(root, "test/reference"), { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".json"))
  .map((name) => `test/reference/${name}`)
  .filter((path) => read(path).includes('"recomputed_in_R"'))
  .sort();

/** Figures kept beside those its recipe makes of the data; R fails unless both have the same names. */
async function besideR(path: string, { data, generator, ...set }: Recomputed) {
  const names = Object.keys(set.recomputed_in_R);
  const recipe = basename(path, ".json").replaceAll("-", ".");
  const given = Object.keys(data).map((name) => `${name} = ${name}`);
  const values = await evalR(
    `${read(shared)}
    ${read(generator)}
    figures <- ${recipe}(${given.join(", ")})
    kept <- c(${names.map((name) => `"${name}"`).join(", ")})
    odd <- c(setdiff(kept, names(figures)), setdiff(names(figures), kept))
    if (length(odd) > 0) stop("only in the file or only in its recipe: ", toString(odd), call. = FALSE)
    figures[kept]`,
    data,
  );
  return Object.entries(set.recomputed_in_R).map(([name, kept], at) => ({
    name,
    kept,
    byR: values[at] ?? Number.NaN,
  }));
}

describe("what a reference keeps as recomputed in R", () => {
  it("is found", () => {
    expect(files.length).toBeGreaterThanOrEqual(32);
  });

  it.each(files)(
    "%s: every figure follows from the data by its recipe, to 12 digits",
    async (path) => {
      const figures = await besideR(path, JSON.parse(read(path)));
      expect(figures.filter(({ byR, kept }) => !(digits(byR, kept) >= 12))).toEqual([]);
    },
  );
});
