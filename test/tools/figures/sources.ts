import { readFileSync } from "node:fs";
import { join } from "node:path";
import { defaults } from "../../../src/results/defaults.ts";
import { root } from "../../support/compiler.ts";

/** Words round figures, and where the figures come from. */
export interface Rule {
  /** The places it speaks for. */
  readonly where: RegExp;
  /** The figures with so many words that nothing else is meant; global. */
  readonly says: RegExp;
  readonly source: string;
  /** The figures in their order, worked out from the source; where there are none, the source is named only. */
  readonly values?: () => readonly string[];
}

const stored = <T>(name: string): T =>
  JSON.parse(readFileSync(join(root, "reports", `${name}.json`), "utf8")) as T;
const percent = (share: number) => String(Math.round(100 * share));
const ends = (shares: readonly number[]) => [
  percent(Math.min(...shares)),
  percent(Math.max(...shares)),
];
/** How far from the middle 95 % lie, where the logarithm has this standard deviation. */
const factor = (sd: number) => String(Math.round(10 * Math.exp(1.959964 * sd)) / 10);

interface Cover {
  readonly interval: string;
  readonly situation: string;
  readonly nominal: number;
  readonly achieved: number;
  readonly claimed: string;
}
const coverage = () => stored<readonly Cover[]>("coverage");
const alike = (interval: string) =>
  coverage().filter((one) => one.interval === interval && one.situation.includes("by 0.6"));
const covered = (some: readonly Cover[]) => some.map(({ achieved }) => achieved);

interface Chance {
  readonly tolerance: number;
  readonly earlierFills: number;
  readonly stated: number;
  readonly happened: number;
}
const chancesAt1 = (first: boolean) =>
  stored<{ chances: readonly Chance[] }>("decision-study").chances.filter(
    (one) => one.tolerance === 0.01 && (one.earlierFills === 0) === first,
  );

interface Lending {
  readonly sections: readonly {
    readonly rows: readonly {
      readonly situation: string;
      readonly cells: readonly {
        readonly at: string;
        readonly of: string;
        readonly found: number;
      }[];
    }[];
  }[];
}
const wildest = (byItself: boolean) =>
  stored<Lending>("lending-study")
    .sections.flatMap(({ rows }) => rows)
    .filter(({ situation }) => situation.endsWith("by itself") === byItself)
    .flatMap(({ cells }) => cells)
    .filter(({ at, of }) => at === "wildest fifth" && of === "coverage")
    .map(({ found }) => found);

interface Drift {
  readonly alarms: readonly {
    readonly name: string;
    readonly by: readonly { readonly fills: number; readonly share: number }[];
  }[];
  readonly nextFills: readonly { readonly name: string; readonly covered: number }[];
}
const drift = () => stored<Drift>("drift-study");
const alarms = (name: string) =>
  drift()
    .alarms.find((one) => one.name === name)
    ?.by.find(({ fills }) => fills === 12)?.share ?? 0;
const nextFills = (name: RegExp) =>
  drift()
    .nextFills.filter((one) => name.test(one.name))
    .map((one) => one.covered);

interface Logs {
  readonly otherErrors: readonly { readonly errors: string; readonly logAsFamily: number }[];
  readonly logAlarms: readonly { readonly fills: number; readonly logAsFamily: number }[];
}
const logs = () => stored<Logs>("outlier-study");

const bounds = () =>
  stored<{ bounds: readonly { boundHolds: number }[] }>("skipping-study")
    .bounds.map(({ boundHolds }) => boundHolds)
    .sort((a, b) => a - b);

const readme: readonly Rule[] = [
  {
    where: /^README/,
    says: /\b\d+ situations of up to [\d,]+ seasons\)\. Where 95 % is claimed, \d+–\d+ %/g,
    source: "reports/coverage.json: situations, replicates, achieved where nominal is claimed",
    values: () => [
      String(coverage().length),
      "4,000",
      "95",
      ...ends(
        covered(coverage().filter((one) => one.claimed === "nominal" && one.nominal === 0.95)),
      ),
    ],
  },
  {
    where: /^README/,
    says: /before by 0\.6, the band for the _next fill_ holds \d+–\d+ %, the mean over fills \d+–\d+ %/g,
    source: "reports/coverage.json: fills each like the one before by 0.6",
    values: () => [
      "0.6",
      ...ends(covered(alike("next fill"))),
      ...ends(covered(alike("mean over fills"))),
    ],
  },
  {
    where: /^README/,
    says: /single catch is covered 91 %/g,
    source:
      "reports/lending-study.json: today's fill, 1 catch, where catch scatter differs between fills",
  },
  {
    where: /^README/,
    says: /lend to it is covered \d+–\d+ %; its line "by itself" holds \d+–\d+ %/g,
    source: "reports/lending-study.json: wildest fifth of meters",
    values: () => [...ends(wildest(false)), ...ends(wildest(true))],
  },
  {
    where: /^README/,
    says: /tolerances of 1, 2, 3 and 5 % together; at 1 %/g,
    source: "bench/study/decision/chances.ts: tolerances",
  },
  {
    where: /^README/,
    says: /\d+ % stated are \d+–\d+ % in a first fill/g,
    source: "reports/decision-study.json: chances at a tolerance of 1 %, no earlier fill",
    values: () => [
      percent(Math.min(...chancesAt1(true).map(({ stated }) => stated))),
      ...ends(chancesAt1(true).map(({ happened }) => happened)),
    ],
  },
  {
    where: /^README/,
    says: /\d+–\d+ % are \d+–\d+ % after others/g,
    source: "reports/decision-study.json: chances at a tolerance of 1 %, after earlier fills",
    values: () => [
      ...ends(chancesAt1(false).map(({ stated }) => stated)),
      ...ends(chancesAt1(false).map(({ happened }) => happened)),
    ],
  },
  {
    where: /^README/,
    says: /in \d+–\d+ % of reports, \d+ % with heavy tails/g,
    source: "reports/decision-study.json: clean, alarmed",
    values: () => {
      const { clean } = stored<{ clean: readonly { errors: string; alarmed: number }[] }>(
        "decision-study",
      );
      const of = (normal: boolean) =>
        clean
          .filter(({ errors }) => (errors === "normal") === normal)
          .map(({ alarmed }) => alarmed);
      return [...ends(of(true)), percent(Math.max(...of(false)))];
    },
  },
  {
    where: /^README/,
    says: /Heavy tails flag \d+–\d+ % of clean logs, normal errors \d+–\d+ %/g,
    source: "reports/outlier-study.json: logAsFamily of logs of 6 and 12 fills",
    values: () => [
      ...ends(
        logs()
          .otherErrors.filter(({ errors }) => errors.startsWith("heavy tails"))
          .map(({ logAsFamily }) => logAsFamily),
      ),
      ...ends(
        logs()
          .logAlarms.filter(({ fills }) => fills === 6 || fills === 12)
          .map(({ logAsFamily }) => logAsFamily),
      ),
    ],
  },
  {
    where: /^README/,
    says: /once in \d+ seasons of twelve fills/g,
    source: "reports/drift-study.json: alarms by itself, 12 fills, to the nearest five seasons",
    values: () => [String(5 * Math.round(1 / alarms("by itself") / 5))],
  },
  {
    where: /^README/,
    says: /next fill's band held \d+–\d+ %, \d+–\d+ % one fill after it, 88 % where a meter creeps/g,
    source: "reports/drift-study.json: nextFills",
    values: () => [
      ...ends(nextFills(/^[58] % from fill [47], (by itself|2 × 9)$/)),
      ...ends(nextFills(/known by the eighth/)),
      percent(Math.min(...nextFills(/0\.5 % a fill/))),
    ],
  },
  {
    where: /^README/,
    says: /90 % bound on skipping held in \d+ % of seasons or more in every situation but one: \d+ %/g,
    source: "reports/skipping-study.json: bounds, boundHolds",
    values: () => ["90", percent(bounds()[1] ?? 0), percent(bounds()[0] ?? 0)],
  },
  {
    where: /^README/,
    says: /the drive is 5 % off/g,
    source: "reports/skipping-study.json: offCentre of the lowest of its bounds",
  },
  {
    where: /^README/,
    says: /Node 20\.19/g,
    source: "package.json: engines, held by test/package.test.ts",
  },
  {
    where: /^README/,
    says: /nine packages, 17 MB/g,
    source: "npm pack and npm ci of the package, measured by test/package.test.ts",
  },
  {
    where: /^README/,
    says: /^> Bin 1 .*$/g,
    source: "data-demo/first-morning, run by test/docs.test.ts",
  },
];

const notebooks: readonly Rule[] = [
  {
    where: /^notebooks/,
    says: /95 of 100|74 of 100|in 83\b/g,
    source: "a rate of a cell of this notebook, as cases of 100",
  },
  {
    where: /^notebooks/,
    says: /two of 30/g,
    source: "advice: twice the turns of the other two (first principles: a constant mass halves)",
  },
  {
    where: /^notebooks/,
    says: /one clean fill in 500 lies as far off, at p = 0\.002/g,
    source: "src/statistics/shift-evidence-limit.ts: newestLimit 0.002 = 1 ÷ 500",
  },
  { where: /^notebooks/, says: /20,000 fills for each/g, source: "bench/study/coverage.ts" },
  {
    where: /^notebooks|^src\/wording/,
    says: /factor 2\.7|fill[s]? of one meter within 1\.5|Faktor(s)? 2,7|within 1\.5|Faktor(s)? 1,5|factor 1\.5/g,
    source: "src/results/defaults.ts: exp(1.96 · betweenMeters), exp(1.96 · betweenFills)",
  },
  {
    where: /^notebooks/,
    says: /from 0\.3 to 0\.8/g,
    source: "bench/study/lending: its situations",
  },
];

const words = /^src\/(wording|errors)\//;
const typed = /^src\/(wording|errors)\/.*\/(help|usage|problems[\w-]*|command)\.ts$/;

const sentences: readonly Rule[] = [
  {
    where: words,
    says: /factor 2\.7, fills of one meter within (a factor )?1\.5|Faktors? 2,7[^.]*?1,5|factor of 2\.7[^.]*?1\.5|2\.7[^.]{0,60}1\.5/g,
    source: "src/results/defaults.ts: exp(1.96 · betweenMeters), exp(1.96 · betweenFills)",
    values: () => [factor(defaults.betweenMeters), factor(defaults.betweenFills)],
  },
  {
    where: typed,
    says: /(?:30 meters|30 Dosierern)/g,
    source: "src/analysis/spread-estimates.ts: fewest meters",
  },
  {
    where: typed,
    says: /20 kg/g,
    source: "src/questions/catches-needed/options.ts: heaviest catch, assumed",
  },
  {
    where: typed,
    says: /(?:2 to 8 complete blocks of 3|2 bis 8 [^.]*?3)/g,
    source: "reports/blocks-study.json: situations in which one spread holds",
  },
  {
    where: typed,
    says: /Exit[- ]?[Cc]odes:.*/g,
    source: "src/cli/exit-codes.ts",
  },
  {
    where: typed,
    says: /.+/gs,
    source:
      "what may be typed or must hold of a file, tried by test/cli and test/wording/problems.test.ts",
  },
  {
    where: words,
    says: /95 in 100|95 von 100|95 %|99[.,]8 %/g,
    source:
      "src/results/defaults.ts: level 0.95; src/questions/fleet/funnel.ts: bands 0.95 and 0.998",
  },
  { where: words, says: /90 %|90-%/g, source: "src/questions/skipping: level of its bounds" },
  { where: words, says: /80 %|80-%/g, source: "src/results/defaults.ts: assurance 0.8" },
  {
    where: words,
    says: /0[.,]8 ?(–|bis|to|and|und) ?3[.,]7|Yazgi[^.]*2017|2017/g,
    source: "Yazgi et al., Applied Engineering in Agriculture 33(1), 2017",
  },
  {
    where: words,
    says: /2[.,]66/g,
    source: "control charts of individuals: 3 ÷ 1.128 (NIST Handbook, 6.3.2.2)",
  },
  {
    where: words,
    says: /slips by 3 %[^.]*3 % less|3 %[^.]*3 %/g,
    source: "first principles: delivery goes with the turns that the wheel makes",
  },
  {
    where: words,
    says: /(?:correlation|Korrelation)[^.]{0,60}0[.,]5/g,
    source: "reports/skipping-study.json and coverage.json: neighbouring fills correlated by 0.5",
  },
  {
    where: words,
    says: /within 5 % of that|(?:at|auf|zu|bei|mit|held to|innerhalb von|um|weniger als|höchstens|; |for|Mit|in) 5 %|gemeint sind 5 %|5 %( are| sind|-|,| Irrtum| der| falsche| gemeint| Fehlalarm)/g,
    source: "src/results/options.ts: 1 − level, or 5 % of the least cost (src/questions/cost)",
  },
  {
    where: words,
    says: /\b4 (?:degrees of freedom|Freiheitsgraden)[^;]*?6 (?:or|oder) 12/g,
    source: "reports/outlier-study.json: otherErrors, heavy tails (t on 4 df), 6 and 12 fills",
  },
  {
    where: words,
    says: /(?:season of|fills: |Saison (?:von|mit)|in )\s?12|12 (?:fills|Füllungen)/g,
    source: "reports/drift-study.json: seasons of 12 fills",
  },
  {
    where: words,
    says: /1 in 100|1 of 100|1 von 100|in 1 of 100|einem von 100|einer von 100/g,
    source: "src/statistics/mandel.ts: h and k at 1 %",
  },
  {
    where: words,
    says: /± 1\b/g,
    source: "normalised error of ISO 13528 and the European accreditation's guides: at most 1",
  },
  {
    where: words,
    says: /(?:to|zu) 1\b/g,
    source: "odds against 1",
  },
  {
    where: words,
    says: /20 (?:turns|Umdrehungen|U\b)/g,
    source: "src/results/defaults.ts: assumedScatter.turns",
  },
  {
    where: words,
    says: /1 % (?:too|zu)|; 0, wenn|being row 1|tare 0|Tara 0|(?:header being|Kopfzeile[^.]*?|from|ab|ist) 1\b|1: |0: |below 0|unter 0|above 0|über 0|0, 1, 2/g,
    source: "counted from 1, or nothing, one or all: no measured figure",
  },
  {
    where: words,
    says: /(?<![\d.,])1 (?=\p{L})/gu,
    source: "one of what is counted",
  },
  {
    where: words,
    says: /\(?GUM[ -](?:supplement|Supplement|Beiblatt|Ergänzung) 1\)?|(?:Beiblatt|Ergänzung) 1/g,
    source: "JCGM 101:2008, supplement 1 to the guide: its name",
  },
];

/** From the most particular to the most general. */
export const rules: readonly Rule[] = [...readme, ...notebooks, ...sentences];
