import { describe, expect, it } from "vitest";
import { refusalWords } from "../../src/cli/commander-words.ts";
import { command, demo } from "../support/command.ts";
import { english, german } from "../support/words.ts";

const morning = demo("first-morning/catches.csv");

/** What is typed, what commander says of it by itself, and what is said in German. */
const refused: readonly (readonly [
  args: readonly string[],
  inEnglish: string,
  inGerman: string,
])[] = [
  [
    ["reprt"],
    "error: unknown command 'reprt'\n(Did you mean report?)",
    "Fehler: Den Befehl „reprt“ gibt es nicht.\n(Ist report gemeint?)",
  ],
  [["xyzzy"], "error: unknown command 'xyzzy'", "Fehler: Den Befehl „xyzzy“ gibt es nicht."],
  [
    ["enough", "--toleranc", "3"],
    "error: unknown option '--toleranc'\n(Did you mean --tolerance?)",
    "Fehler: Die Option --toleranc gibt es nicht.\n(Ist --tolerance gemeint?)",
  ],
  [
    ["enough", "--cost-per-cal"],
    "error: unknown option '--cost-per-cal'\n(Did you mean one of --cost-per-catch, --cost-per-fill?)",
    "Fehler: Die Option --cost-per-cal gibt es nicht.\n(Ist eines davon gemeint: --cost-per-catch, --cost-per-fill?)",
  ],
  [["report"], "error: missing required argument 'catches'", "Fehler: Es fehlt <Proben>."],
  [
    ["report", "--out"],
    "error: option '--out <dir>' argument missing",
    "Fehler: Der Option --out <Ordner> fehlt ihr Wert.",
  ],
  [
    ["check", "a", "b"],
    "error: too many arguments for 'check'. Expected 1 argument but got 2.",
    "Fehler: Zu viele Argumente für check: höchstens 1, angegeben sind 2.",
  ],
  [
    ["enough", morning, "--units", "si"],
    "error: option '--units <system>' argument 'si' is invalid. Allowed choices are metric, us.",
    "Fehler: „si“ passt nicht zur Option --units <System>. Möglich sind metric, us.",
  ],
  [
    ["enough", morning, "--tolerance", "0.03"],
    "error: option '--tolerance <share>' argument '0.03' is invalid. It may be 0.03 percent or 3 percent: write 0.03% or 3%.",
    "Fehler: „0.03“ passt nicht zur Option --tolerance <Anteil>. Das können 0.03 Prozent oder 3 Prozent sein: Schreiben Sie 0.03% oder 3%.",
  ],
  [
    ["enough", morning, "--turns", "it's\n'1,000' is invalid. "],
    "error: option '--turns <n>' argument 'it's\n'1,000' is invalid. ' is invalid. It must be one number, with a decimal point and without a comma.",
    "Fehler: „it's\n'1,000' is invalid. “ passt nicht zur Option --turns <n>. Nötig ist eine einzige Zahl, mit Dezimalpunkt und ohne Komma.",
  ],
];

describe("arguments that are refused", () => {
  it.each(refused)(
    "%j are said to be in English as commander does, and in German",
    async (args, en, de) => {
      const [name = "", ...rest] = args;
      expect(await command(...args)).toEqual({
        code: 2,
        out: "",
        err: `${en}\n${english().help.afterError}`,
      });
      expect(await command(name, "--language", "de", ...rest)).toEqual({
        code: 2,
        out: "",
        err: `${de}\n${german().help.afterError}`,
      });
    },
  );

  it("are told of in the words of commander where these are not known", () => {
    expect(refusalWords("error: something new", german().usage)).toBe("error: something new");
  });
});
