import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { brokenEndings } from "../bench/study/one-voice/endings.ts";
import { milderWhenGraver } from "../bench/study/one-voice/graver.ts";
import { csvOf, type InventedLog, inventedLog } from "../bench/study/one-voice/log.ts";
import { analysisOf, type Surfaces, surfacesOf } from "../bench/study/one-voice/surfaces.ts";
import { disagreements } from "../bench/study/one-voice/voice.ts";
import { command, inFolder } from "./support/command.ts";
import { present } from "./support/reference.ts";

const logs = Array.from({ length: 150 }, (_, i) => inventedLog(i + 1));
const everyFifth = logs.filter((_, i) => i % 5 === 0);

describe("150 invented logs", () => {
  it("are told alike on terminal, table, card, section and in the results, in both languages", async () => {
    for (const log of logs)
      for (const surfaces of surfacesOf(await analysisOf(log)))
        expect(disagreements(surfaces), told(log)).toEqual([]);
  }, 120_000);

  it("get from `enough` the decision and the line that the report gives", async () => {
    for (const log of everyFifth) {
      const surfaces = surfacesOf(await analysisOf(log));
      const { decisions, text } = await enough(log);
      expect(decisions, told(log)).toEqual(surfaces.map(({ answers }) => answers.decision));
      for (const { said } of surfaces) expect(text, told(log)).toContain(said[0]?.terminal);
    }
  }, 120_000);

  it("never have a look-first that its named ending does not end", async () => {
    for (const log of logs) expect(await brokenEndings(log), told(log)).toEqual([]);
  }, 240_000);

  it("never get a milder action when something serious is added", async () => {
    for (const log of everyFifth) expect(await milderWhenGraver(log), told(log)).toEqual([]);
  }, 120_000);

  it("hold every action there is, so that the above is no empty promise", async () => {
    const actions = new Set<string>();
    for (const log of logs)
      for (const { decision } of (await analysisOf(log)).meters)
        actions.add(decision?.action ?? "none");
    expect([...actions].sort()).toEqual(["catch-more", "look-first", "none", "set"]);
  }, 120_000);
});

describe("a surface made to disagree is found out", () => {
  it("on the terminal, the table, the card and the section, by another line or another count", async () => {
    const surfaces = await short();
    expect(disagreements(surfaces)).toEqual([]);
    const [english] = surfaces.said;
    const said = present(english);
    const otherLine = said.card.replace(/^.*/, "Set 0.3 kg/turn");
    const otherCount = `${said.everything}\nTake 7 more catches of 20 turns.`;
    for (const tampered of [
      { ...said, terminal: said.terminal.replace(/: .*/, ": Set 0.3 kg/turn") },
      { ...said, table: "" },
      { ...said, card: otherLine },
      { ...said, section: "Set 0.3 kg/turn" },
      { ...said, everything: otherCount },
      { ...said, everything: `${said.everything}\nSet the drive to today's value.` },
    ])
      expect(disagreements({ ...surfaces, said: [tampered] })).not.toEqual([]);
  });

  it("in the results, by a milder action, advice beyond the caps or another width", async () => {
    const surfaces = await short();
    const { answers } = surfaces;
    const decision = present(answers.decision);
    const needed = present(answers.catchesNeeded);
    for (const tampered of [
      { ...answers, decision: { ...decision, action: "set" as const } },
      {
        ...answers,
        decision: { ...decision, catches: { ...present(decision.catches), further: 9 } },
      },
      { ...answers, catchesNeeded: { ...needed, halfWidth: 0.01 } },
    ])
      expect(disagreements({ ...surfaces, answers: tampered })).not.toEqual([]);
  });
});

/** Three catches that are short of a tolerance. */
async function short(): Promise<Surfaces> {
  const rows = [6.36, 6.48, 6.56].map((netKg, i) => ({
    bin: "east",
    product: "barley",
    fill: 1,
    catch: i + 1,
    turns: 20,
    netKg,
    checked: "",
    exclude: "",
    reason: "",
  }));
  const setup = { tolerance_percent: 3, bins: [] };
  const [surfaces] = surfacesOf(await analysisOf({ seed: 0, features: [], rows, setup }));
  return present(surfaces);
}

async function enough(log: InventedLog) {
  return inFolder(async (folder) => {
    const catches = join(folder, "catches.csv");
    await writeFile(catches, csvOf(log.rows));
    const setup = join(folder, "own-setup.json");
    await writeFile(setup, JSON.stringify(log.setup ?? {}));
    const args = log.setup === null ? [] : ["--setup", setup];
    const json = await command("enough", catches, ...args, "--json");
    const { answers }: { answers: readonly { decision: unknown }[] } = JSON.parse(json.out);
    const { out } = await command("enough", catches, ...args);
    return { decisions: answers.map(({ decision }) => decision), text: out };
  });
}

function told({ seed, features }: InventedLog): string {
  return `log ${seed}: ${features.join(", ")}`;
}
