import { spawn } from "node:child_process";
import { join } from "node:path";
import { createColors } from "picocolors";
import { describe, expect, it } from "vitest";
import { inert, inertIo } from "../../src/cli/inert.ts";
import { command, demo, fileWith, inFolder } from "../support/command.ts";

const sly = "\u001b[2J\u001b]0;owned\u0007oats\u202egnp.\u2066\u009b31m";

describe("what is said to a terminal", () => {
  it("writes out what a terminal would act on, and leaves letters of every language alone", () => {
    expect(inert(sly)).toBe("\\u001b[2J\\u001b]0;owned\\u0007oats\\u202egnp.\\u2066\\u009b31m");
    const said = "Möhre 5,4 kg\t± 3 %\nرز, 水稻, 🌾, d\u2019été";
    expect(inert(said)).toBe(said);
    expect(JSON.parse(inert(JSON.stringify({ product: sly })))).toEqual({ product: sly });
  });

  it("keeps its own colours and none of the data's", () => {
    const said: string[] = [];
    const out = (text: string) => said.push(text);
    const colours = createColors(true);
    const io = inertIo({ out, err: out, outColors: colours, errColors: colours });
    io.err(`${io.errColors.red("bad: \u001b[8m")} \u001b[32m`);
    expect(said).toEqual([`${colours.red("bad: \\u001b[8m")} \\u001b[32m`]);
  });

  it("has nothing of the data's in any answer", async () => {
    await inFolder(async (folder) => {
      const rows = [1, 2, 3].map((n) => `"${sly}","${sly}x",1,${n},20,5.8${n}`);
      const path = await fileWith(
        folder,
        "catches.csv",
        ["bin,product,fill,catch,turns,net_kg", ...rows].join("\n"),
      );
      for (const args of [
        ["report", path, "--out", join(folder, "out")],
        ["enough", path],
        ["enough", path, "--json"],
        ["plan", sly, "oats"],
        ["check", `${path}${sly}`],
      ]) {
        const { out, err } = await command(...args);
        expect(out + err).toContain("\\u001b");
        expect(inert(out + err)).toBe(out + err);
      }
    });
  });
});

describe("a closed pipe and a full disk", () => {
  it("end without a trace of the program", async () => {
    const main = new URL("../../src/cli/main.ts", import.meta.url).pathname;
    const said = (shell: string) =>
      new Promise<string>((resolve) => {
        const child = spawn("bash", ["-c", shell], { stdio: ["ignore", "pipe", "pipe"] });
        let text = "";
        for (const stream of [child.stdout, child.stderr])
          stream.on("data", (part) => {
            text += part;
          });
        child.on("close", (code) => resolve(`${text}exit ${code}`));
      });
    const enough = `"${process.execPath}" --import tsx "${main}" enough "${demo("first-morning/catches.csv")}"`;
    const [closed, full] = await Promise.all([
      said(`${enough} 2>&1 1>&- | cat; true`),
      said(`${enough} > /dev/full`),
    ]);
    for (const text of [closed, full]) expect(text).not.toMatch(/^\s+at |node:internal/m);
    expect(full).toMatch(/ENOSPC.*exit 2$/s);
  });
});
