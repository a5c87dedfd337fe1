import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { surfacesOf } from "../bench/study/one-voice/surfaces.ts";
import { analyse } from "../src/analysis/analyse.ts";
import type { Decision } from "../src/analysis/decision.ts";
import { readCatchesFile, readSetupFile } from "../src/node.ts";
import { command, demo, inFolder } from "./support/command.ts";
import { catchesOf, fieldCheckOf, states } from "./support/decision-states.ts";
import { present } from "./support/reference.ts";

/** What every place is to say of the one bin of a file. */
interface Expected {
  readonly decision: Partial<Decision>;
  readonly en: Lines;
  readonly de: Lines;
}

interface Lines {
  readonly action: string;
  readonly sure: string;
  /** The first sentence of the part on the number of catches, from "known" on. */
  readonly enough: string;
}

const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/g, " ");
const firstMorning = {
  catches: () => readFile(demo("first-morning/catches.csv"), "utf8"),
  setup: async () => JSON.parse(await readFile(demo("first-morning/setup.json"), "utf8")),
};

const morning: Lines & { readonly de: Lines } = {
  action: "4 more catches of 20 turns",
  sure: "0.3233 kg/turn so far, ± 3.9 %. 4 more catches of 20 turns: within ± 3.0 % with a chance of 83 % (typically ± 1.5 %).",
  enough:
    "known within ± 3.9 % after 3 catches; 4 more catches of 20 turns: within ± 3.0 % with a chance of 83 % (typically ± 1.5 %).",
  de: {
    action: "4 weitere Proben mit 20 Umdrehungen",
    sure: "bisher 0,3233 kg/U, ± 3,9 %. 4 weitere Proben mit 20 Umdrehungen: innerhalb von ± 3,0 % mit einer Chance von 83 % (in der Regel ± 1,5 %).",
    enough:
      "auf ± 3,9 % bekannt nach 3 Proben; 4 weitere Proben mit 20 Umdrehungen: innerhalb von ± 3,0 % mit einer Chance von 83 % (in der Regel ± 1,5 %).",
  },
};

/** Writes the files, asks every command in both languages, holds each place to what is expected; returns the card. */
async function expectEverywhere(
  catches: string,
  setup: object | null,
  expected: Expected,
): Promise<string> {
  return inFolder(async (folder) => {
    const path = join(folder, "catches.csv");
    await writeFile(path, catches);
    const setupPath = join(folder, "own-setup.json");
    await writeFile(setupPath, JSON.stringify(setup ?? {}));
    const files = setup === null ? [path] : [path, "--setup", setupPath];

    const analysis = analyse(
      await readCatchesFile(path),
      setup === null ? null : await readSetupFile(setupPath),
    );
    const [surfaces] = surfacesOf(analysis);
    for (const language of ["en", "de"] as const) {
      const lines = expected[language];
      const out = join(folder, `report-${language}`);
      const flags = ["--language", language];
      const enough = JSON.parse((await command("enough", ...files, ...flags, "--json")).out);
      expect(enough.answers).toHaveLength(1);
      expect(enough.answers[0].decision).toMatchObject(expected.decision);

      const report = await command("report", ...files, "--out", out, ...flags);
      const terminal = plain(report.out);
      const asked = plain((await command("enough", ...files, ...flags, "--detail")).out);
      for (const text of [terminal, asked]) {
        expect(text).toContain(`: ${lines.action}\n`);
        expect(text).toContain(lines.sure);
      }
      expect(asked).toContain(lines.enough);

      const { meters } = JSON.parse(await readFile(join(out, "report.json"), "utf8"));
      expect(meters[0].decision).toEqual(enough.answers[0].decision);
      expect(meters[0].catchesNeeded).toEqual(enough.answers[0].catchesNeeded);

      const said = present(surfaces?.said.find((one) => one.language === language));
      const [action, sure] = plain(said.card).split("\n");
      expect([action, sure]).toEqual([lines.action, lines.sure]);
      expect(plain(said.section)).toBe(`${lines.action} ${lines.sure}`);
      expect(plain(said.everything)).toContain(lines.enough);
      expect(plain(said.table)).toContain(lines.action);
      const markdown = plain(await readFile(join(out, "report.md"), "utf8"));
      for (const line of [lines.action, lines.sure]) expect(markdown).toContain(line);
    }
    return plain(present(surfaces?.said[0]).card);
  });
}

/** Numbers of further catches to take, anywhere in what is said of these files, in English. */
async function countsAnywhere(catches: string, setup: object | null): Promise<readonly string[]> {
  return inFolder(async (folder) => {
    const path = join(folder, "catches.csv");
    await writeFile(path, catches);
    const setupPath = join(folder, "own-setup.json");
    await writeFile(setupPath, JSON.stringify(setup ?? {}));
    const out = join(folder, "report");
    const { out: said } = await command("report", path, "--setup", setupPath, "--out", out);
    const { out: asked } = await command("enough", path, "--setup", setupPath);
    const markdown = await readFile(join(out, "report.md"), "utf8");
    const found = plain(`${said}\n${asked}\n${markdown}`).matchAll(
      /(\d+|One|two|three|four) (more|further) catch(es)?( of [\d.]+ turns)?/g,
    );
    return [...new Set([...found].map(([text]) => text))];
  });
}

// Numbers of catches, their chances and what to expect: R, by the F law of the squares still to come.
describe("the same answer, wherever it is read", () => {
  it("three catches of a first morning at 3 %: 4 more of 20 turns, with a chance of 83 %", async () => {
    const [catches, setup] = [await firstMorning.catches(), await firstMorning.setup()];
    await expectEverywhere(catches, setup, {
      decision: {
        action: "catch-more",
        catches: {
          further: 4,
          turns: 20,
          reaches: 0.03,
          chance: expect.closeTo(0.8276, 4) as unknown as number,
        },
        setting: null,
        reasons: ["short-of-tolerance"],
      },
      en: morning,
      de: morning.de,
    });
    expect(await countsAnywhere(catches, setup)).toEqual(["4 more catches of 20 turns"]);
  });

  it("6.4, 6.4 and 6.4 kg at 20 turns, nothing else given: the digits bear steps of 0.2 kg, which set the band", async () => {
    const catches = catchesOf({ masses: [6.4, 6.4, 6.4] });
    await expectEverywhere(catches, null, {
      decision: { action: "set", catches: null, reasons: ["stopped-on-width"] },
      en: {
        action: "Set 0.320 kg/turn",
        // 1.96·0.2/√6·3/60 over 0.32 kg/turn.
        sure: "0.320 kg/turn, within ± 5.0 %, which is assumed (worked out: ± 2.5 %).",
        enough: "known within ± 2.5 % after 3 catches, enough for the tolerance of ± 5.0 %.",
      },
      de: {
        action: "0,320 kg/U einstellen",
        sure: "0,320 kg/U, innerhalb von ± 5,0 %, die angenommen sind (errechnet: ± 2,5 %).",
        enough: "auf ± 2,5 % bekannt nach 3 Proben, genug für die Toleranz von ± 5,0 %.",
      },
    });
    expect(await countsAnywhere(catches, null)).toEqual([]);
  });

  it("three weights that were worked out and agree: one longer catch, no band", async () => {
    const catches = catchesOf({ masses: [6.4000001, 6.4000001, 6.4000001] });
    await expectEverywhere(catches, null, {
      decision: {
        action: "catch-more",
        catches: { further: 1, turns: 40, reaches: null, chance: null },
        reasons: ["zero-scatter-unscaled"],
      },
      en: {
        action: "One more catch of 40 turns",
        sure: "0.32 kg/turn so far; how far off it may be is not known.",
        enough: "3 catches say nothing of their error.",
      },
      de: {
        action: "Noch eine Probe mit 40 Umdrehungen",
        sure: "bisher 0,32 kg/U; wie weit das daneben liegen kann, ist nicht bekannt.",
        enough: "3 Proben sagen nichts über deren Fehler.",
      },
    });
    expect(await countsAnywhere(catches, null)).toEqual(["One more catch of 40 turns"]);
  });

  it("one catch after fills whose catches agreed exactly, on a scale of 0.1 kg by their digits: its steps and few degrees of freedom make the band", async () => {
    const catches = catchesOf(
      { fill: 1, masses: [6.4, 6.4, 6.4] },
      { fill: 2, masses: [6.5, 6.5, 6.5] },
      { fill: 3, masses: [6.5] },
    );
    await expectEverywhere(catches, null, {
      decision: { action: "set", catches: null, reasons: ["stopped-on-width"] },
      en: {
        action: "Set 0.3250 kg/turn",
        // 1.96·0.1/√6·1/20 over 0.325 kg/turn.
        sure: "0.3250 kg/turn, within ± 5.0 %, which is assumed (worked out: ± 2.3 %).",
        enough: "known within ± 2.3 % after 1 catch, enough for the tolerance of ± 5.0 %.",
      },
      de: {
        action: "0,3250 kg/U einstellen",
        sure: "0,3250 kg/U, innerhalb von ± 5,0 %, die angenommen sind (errechnet: ± 2,3 %).",
        enough: "auf ± 2,3 % bekannt nach 1 Probe, genug für die Toleranz von ± 5,0 %.",
      },
    });
  });

  it("the same on a scale of 20 g: the scale sets the band, and it is enough for 5 %", async () => {
    await expectEverywhere(
      catchesOf({ masses: [6.4, 6.4, 6.4] }),
      { tolerance_percent: 5, scale: { division: { value: 20, unit: "g" } } },
      {
        decision: { action: "set", catches: null, reasons: ["stopped-on-width"] },
        en: {
          action: "Set 0.3200 kg/turn",
          sure: "0.3200 kg/turn, within your ± 5.0 % (worked out: ± 0.3 %).",
          enough: "known within ± 0.3 % after 3 catches, enough for the tolerance of ± 5.0 %.",
        },
        de: {
          action: "0,3200 kg/U einstellen",
          sure: "0,3200 kg/U, innerhalb Ihrer ± 5,0 % (errechnet: ± 0,3 %).",
          enough: "auf ± 0,3 % bekannt nach 3 Proben, genug für die Toleranz von ± 5,0 %.",
        },
      },
    );
  });

  it("6.0 and 6.4 kg: a third, then ask again, and no other number anywhere", async () => {
    const catches = catchesOf({ masses: [6.0, 6.4] });
    await expectEverywhere(catches, null, {
      decision: {
        action: "catch-more",
        catches: { further: 1, turns: 20, reaches: null, chance: null },
        setting: null,
      },
      en: {
        action: "One more catch of 20 turns",
        // t(0.975, 1)·√(0.004/40 + 0.2²/6·(2/40)²) over 0.31 kg/turn: both weights end in steps of 0.2 kg.
        sure: "0.310 kg/turn so far, ± 44.3 %.",
        enough: "two catches cannot say how much they scatter. Take a third, then ask again.",
      },
      de: {
        action: "Noch eine Probe mit 20 Umdrehungen",
        sure: "bisher 0,310 kg/U, ± 44,3 %.",
        enough:
          "Zwei Proben können nicht sagen, wie stark sie streuen. Nehmen Sie eine dritte, dann fragen Sie wieder.",
      },
    });
    expect(await countsAnywhere(catches, null)).toEqual(["One more catch of 20 turns"]);
  });

  it("6.0 and 3.1 kg: one of these is wrong, no band, each one's figure beside it", async () => {
    const catches = catchesOf({ masses: [6.0, 3.1] });
    const said = await expectEverywhere(catches, null, {
      decision: {
        action: "look-first",
        catches: { further: 1, turns: 20, reaches: null, chance: null },
        setting: null,
        reasons: ["catches-disagree"],
      },
      en: {
        action: "Look first: catches 1 and 2 lie 63.7 % apart",
        sure: "0.2275 kg/turn so far; how far off it may be is not known.",
        enough: "a catch of this fill must be explained or repeated first;",
      },
      de: {
        action: "Erst nachsehen: die Proben 1 und 2 liegen 63,7 % auseinander",
        sure: "bisher 0,2275 kg/U; wie weit das daneben liegen kann, ist nicht bekannt.",
        enough: "Eine Probe dieser Füllung muss erst erklärt oder wiederholt werden;",
      },
    });
    for (const figure of ["0.3000 kg/turn", "0.1550 kg/turn"]) expect(said).toContain(figure);
    expect(said).toContain("one of these is wrong; catch again");
  });

  it("6.3, 6.4 and 12.7 kg: one of these is wrong, no band, each pair's figure beside it", async () => {
    const catches = catchesOf({ masses: [6.3, 6.4, 12.7] });
    const said = await expectEverywhere(catches, null, {
      decision: {
        action: "look-first",
        catches: null,
        setting: null,
        reasons: ["catches-disagree"],
      },
      en: {
        action: "Look first: catches 1 and 3 lie 75.6 % apart",
        sure: "0.4233 kg/turn so far; how far off it may be is not known.",
        enough: "a catch of this fill must be explained or repeated first;",
      },
      de: {
        action: "Erst nachsehen: die Proben 1 und 3 liegen 75,6 % auseinander",
        sure: "bisher 0,4233 kg/U; wie weit das daneben liegen kann, ist nicht bekannt.",
        enough: "Eine Probe dieser Füllung muss erst erklärt oder wiederholt werden;",
      },
    });
    for (const pair of ["0.3175 kg/turn", "0.4750 kg/turn", "0.4775 kg/turn"])
      expect(said).toContain(pair);
    expect(await countsAnywhere(catches, null)).toEqual([]);
  });

  it("a target of 600 kg/ha on a motor that reaches 61 to 287: look first, and the catches all the same", async () => {
    const setup = await firstMorning.setup();
    const [bin] = setup.bins;
    const bins = [{ ...bin, target_rate: { value: 600, unit: "kg/ha" } }];
    await expectEverywhere(
      await firstMorning.catches(),
      { ...setup, bins },
      {
        decision: {
          action: "look-first",
          catches: {
            further: 4,
            turns: 20,
            reaches: 0.03,
            chance: expect.closeTo(0.8276, 4) as unknown as number,
          },
          setting: null,
          reasons: ["target-out-of-reach"],
        },
        en: {
          ...morning,
          action: "Look first: the drive cannot put out 600 kg/ha; it reaches 61.59 to 287.4 kg/ha",
        },
        de: {
          ...morning.de,
          action:
            "Erst nachsehen: der Antrieb kann 600 kg/ha nicht ausbringen; er reicht von 61,59 bis 287,4 kg/ha",
        },
      },
    );
  });

  it("a field check 12.5 % off: look first, whatever the catches say", async () => {
    const masses = [6.46, 6.48, 6.44, 6.46, 6.48, 6.46, 6.44, 6.48];
    await expectEverywhere(
      catchesOf({ masses }),
      {
        tolerance_percent: 3,
        scale: { division: { value: 20, unit: "g" } },
        field_checks: [fieldCheckOf(0.875, "2026-04-12")],
      },
      {
        decision: { action: "look-first", catches: null, reasons: ["field-disagrees"] },
        en: {
          action: "Look first: the field got 12.5 % less than the catches said",
          sure: "0.3231 kg/turn so far, ± 0.3 %.",
          enough:
            "look first, as said above; the number of catches counts after that (known within ± 0.3 % after 8 catches).",
        },
        de: {
          action:
            "Erst nachsehen: auf dem Feld war es 12,5 % weniger, als die Proben erwarten lassen",
          sure: "bisher 0,3231 kg/U, ± 0,3 %.",
          enough:
            "Erst nachsehen, wie oben gesagt; auf die Zahl der Proben kommt es danach an (auf ± 0,3 % bekannt nach 8 Proben).",
        },
      },
    );
  });

  it("three catches with prices and no tolerance: another costs 4 and saves 1.01, so go", async () => {
    const { catches, setup } = states["enough by money"];
    const card = await expectEverywhere(catches, setup, {
      decision: { action: "set", catches: null, reasons: ["enough-by-money"] },
      en: {
        action: "Set 0.3233 kg/turn",
        sure: "0.3233 kg/turn, within ± 5.0 %, which is assumed (worked out: ± 3.9 %).",
        enough:
          "known within ± 3.9 % after 3 catches. Another catch costs 4.00 CAD and saves about 1.01 CAD: enough.",
      },
      de: {
        action: "0,3233 kg/U einstellen",
        sure: "0,3233 kg/U, innerhalb von ± 5,0 %, die angenommen sind (errechnet: ± 3,9 %).",
        enough:
          "auf ± 3,9 % bekannt nach 3 Proben. Eine weitere Probe kostet 4,00 CAD und spart etwa 1,01 CAD. Das ist genug.",
      },
    });
    expect(card).toContain("Another catch costs 4.00 CAD and saves about 1.01 CAD: go.");
    expect(await countsAnywhere(catches, setup)).toEqual([]);
  });

  it("the same on twelve times the area: three more pay", async () => {
    const { catches, setup } = states["catches that pay"];
    const card = await expectEverywhere(catches, setup, {
      decision: {
        action: "catch-more",
        catches: {
          further: 3,
          turns: 20,
          reaches: 0.05,
          chance: expect.closeTo(0.926, 2) as unknown as number,
        },
        setting: null,
        reasons: ["next-catch-pays"],
      },
      en: {
        action: "3 more catches of 20 turns",
        sure: "0.3233 kg/turn so far, ± 3.9 %. 3 more catches of 20 turns: typically ± 1.7 %.",
        enough:
          "known within ± 3.9 % after 3 catches; 3 more catches of 20 turns: typically ± 1.7 %.",
      },
      de: {
        action: "3 weitere Proben mit 20 Umdrehungen",
        sure: "bisher 0,3233 kg/U, ± 3,9 %. 3 weitere Proben mit 20 Umdrehungen: in der Regel ± 1,7 %.",
        enough:
          "auf ± 3,9 % bekannt nach 3 Proben; 3 weitere Proben mit 20 Umdrehungen: in der Regel ± 1,7 %.",
      },
    });
    expect(card).toContain("Another catch costs 4.00 CAD and saves about 12.12 CAD: it pays.");
    expect(await countsAnywhere(catches, setup)).toEqual(["3 more catches of 20 turns"]);
  });
});
