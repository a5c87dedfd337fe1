import { cp, mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { codeLoader } from "../../src/cli/kept-code.ts";
import { filesIn, inFolder } from "../support/command.ts";

const outside = (name: string) => ({ name });

interface Answer {
  readonly answer: number;
}

/** A loader that keeps in the folder, and what it takes from the script with this text. */
async function loaded(folder: string, text: string) {
  const path = join(folder, "one.cjs");
  await writeFile(path, text);
  const loader = codeLoader(join(folder, "kept", "it.bin"), outside);
  return { loader, given: loader.load(path) as Answer };
}

const kept = (folder: string) => readFile(join(folder, "kept", "it.bin"));

describe("code that is kept", () => {
  it("is of scripts that ask for one another and for others, each run once", () =>
    inFolder(async (folder) => {
      await mkdir(join(folder, "below"));
      await writeFile(
        join(folder, "below", "two.cjs"),
        'globalThis.times = (globalThis.times ?? 0) + 1; module.exports = { url: here.url, far: require("far") };',
      );
      const { given } = await loaded(
        folder,
        'const a = require("./below/two.cjs"), b = require("./below/two.cjs"); module.exports = { a, same: a === b };',
      );
      const url = `file://${folder}/below/two.cjs`;
      expect(given).toEqual({ a: { url, far: { name: "far" } }, same: true });
      expect((globalThis as { times?: number }).times).toBe(1);
    }));

  it("may be of a bundled module, with names of its own for what comes and goes", () =>
    inFolder(async (folder) => {
      await writeFile(
        join(folder, "base.js"),
        "var a=3,b=()=>4;export{a as x,b as default$,a as three};\n",
      );
      await writeFile(
        join(folder, "module.js"),
        'import{x as e,default$ as f}from"./base.js";import"./base.js";var g=e*f();export{g as answer};\n',
      );
      const { given } = await loaded(folder, 'module.exports = require("./module.js");');
      expect(given).toEqual({ answer: 12 });
    }));

  it("is taken by the next loader, which then has nothing to keep", () =>
    inFolder(async (folder) => {
      const text = "module.exports = { answer: 1 };";
      (await loaded(folder, text)).loader.keep();
      const first = await kept(folder);
      const again = await loaded(folder, text);
      expect(again.given.answer).toBe(1);
      await writeFile(join(folder, "kept", "it.bin"), "not touched");
      again.loader.keep();
      expect(String(await kept(folder))).toBe("not touched");
      expect(first.length).toBeGreaterThan(100);
      expect(await filesIn(join(folder, "kept"))).toEqual(["it.bin"]);
    }));

  it("is not taken for a script that changed, be it as long as before", () =>
    inFolder(async (folder) => {
      // The engine itself compares lengths alone.
      (await loaded(folder, "module.exports = { answer: 1 };")).loader.keep();
      const changed = await loaded(folder, "module.exports = { answer: 2 };");
      expect(changed.given.answer).toBe(2);
      changed.loader.keep();
      const { given } = await loaded(folder, "module.exports = { answer: 2 };");
      expect(given.answer).toBe(2);
    }));

  it("moves with its scripts", () =>
    inFolder(async (folder) => {
      const text = "module.exports = { answer: 1 };";
      (await loaded(folder, text)).loader.keep();
      await inFolder(async (other) => {
        await cp(folder, other, { recursive: true });
        const { loader, given } = await loaded(other, text);
        expect(given.answer).toBe(1);
        await writeFile(join(other, "kept", "it.bin"), "not touched");
        loader.keep();
        expect(String(await kept(other))).toBe("not touched");
      });
    }));

  it("is made anew where it was damaged or cut off", () =>
    inFolder(async (folder) => {
      const text = "module.exports = { answer: 1 };";
      (await loaded(folder, text)).loader.keep();
      const whole = await kept(folder);
      const flipped = Buffer.from(whole);
      flipped.writeUInt8(flipped.readUInt8(whole.length - 20) ^ 255, whole.length - 20);
      for (const damaged of [flipped, whole.subarray(0, 60), Buffer.alloc(2), Buffer.alloc(0)]) {
        await writeFile(join(folder, "kept", "it.bin"), damaged);
        const { loader, given } = await loaded(folder, text);
        expect(given.answer).toBe(1);
        loader.keep();
        expect((await kept(folder)).length).toBe(whole.length);
      }
    }));

  it("stays away without a word where nothing may be written", () =>
    inFolder(async (folder) => {
      const { loader } = await loaded(folder, "module.exports = { answer: 1 };");
      // A file where the folder would be: nobody can write below it, whoever they are.
      await writeFile(join(folder, "kept"), "");
      expect(() => loader.keep()).not.toThrow();
      expect(await filesIn(folder)).toEqual(["kept", "one.cjs"]);
    }));
});
