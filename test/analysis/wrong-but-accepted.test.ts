import { describe, expect, it } from "vitest";
import { allCautions } from "../../src/analysis/all-cautions.ts";
import { decidedLog } from "../../src/analysis/decided-bin.ts";
import { checkFindings } from "../../src/cli/check-command.ts";
import { readCatches } from "../../src/data/read-catches.ts";
import { readSetup } from "../../src/data/read-setup.ts";
import { standingOf } from "../../src/results/caution.ts";
import { type Given, wrongButAccepted } from "../support/wrong-but-accepted.ts";

async function read({ source, setup }: Given, answered: object[] = []) {
  const log = await readCatches(source);
  const text = JSON.stringify({ ...setup, ...(answered.length > 0 ? { answered } : {}) });
  return { log, setup: readSetup({ name: "setup.json", text }) };
}

async function answer(given: Given, answered: object[] = []) {
  const { log, setup } = await read(given, answered);
  const analysis = decidedLog(log, setup, {});
  const found = allCautions(analysis);
  return { analysis, found, checked: checkFindings(log, setup) };
}

const cases = Object.entries(wrongButAccepted).map(([name, make]) => ({ name, ...make() }));

describe.each(cases)("$name", ({ code, wrong, meant }) => {
  it(`is asked about as ${code}, by report and check alike`, async () => {
    const { analysis, found, checked } = await answer(wrong);
    const asked = found.filter((one) => one.code === code);
    expect(asked).not.toEqual([]);
    expect(checked.filter((one) => one.code === code)).toEqual(asked);
    if (standingOf(code).asks !== "look-first") return;
    const decisions = analysis.meters.flatMap(({ decision }) => decision ?? []);
    expect(decisions.filter(({ reasons }) => reasons.includes(code))).not.toEqual([]);
  });

  it("is not asked about as it was meant", async () => {
    const { found } = await answer(meant);
    expect(found.filter((one) => one.code === code)).toEqual([]);
  });

  it("is settled by an answer in the setup", async () => {
    const { analysis } = await answer(wrong);
    const answered = analysis.meters.map(({ bin }) => ({ code, bin, note: "it is so" }));
    const after = await answer(wrong, answered);
    const decisions = after.analysis.meters.flatMap(({ decision }) => decision ?? []);
    for (const { reasons, also } of decisions) expect([...reasons, ...also]).not.toContain(code);
    expect(after.analysis.meters.flatMap((one) => one.answered)).toContainEqual({
      code,
      note: "it is so",
    });
  });
});
