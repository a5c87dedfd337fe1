import { type ErrorLaw, noises, type Season } from "./season.ts";

/** Which interval of the library a cell looks at. */
export type IntervalName =
  | "this fill, own scatter"
  | "this fill, pooled scatter"
  | "next catch"
  | "mean over fills"
  | "mean over fills, REML"
  | "next fill"
  | "fill-to-fill spread"
  | "catch scatter"
  | "all catches as fills";

/** One situation to be simulated, and what the documentation promises for it. */
export interface Cell {
  readonly interval: IntervalName;
  readonly situation: string;
  readonly season: Season;
  /**
   * "nominal": within 93–97 %. "at least": not below 93 %; wider on purpose. "no": a weakness the README names.
   */
  readonly claimed: "nominal" | "at least" | "no";
}

const times = <T>(count: number, value: T): T[] => Array.from({ length: count }, () => value);
const equal = (fills: number, catches: number) => times(fills, times(catches, 20));
const unbalanced = (fills: number) =>
  Array.from({ length: fills }, (_, i) => times(2 + ((i * 5) % 9), 20));
const percent = (fraction: number) => `${+(fraction * 100).toFixed(2)} %`;

/** Every situation of the study, grouped as the report shows them. */
export const cells: readonly Cell[] = [
  ...ownScatter(),
  ...readingTheScale(),
  ...pooledScatter(),
  ...acrossFills(),
  ...fillsThatAreNotNormal(),
  ...fillsThatRemember(),
  ...whatNotToDo(),
];

function ownScatter(): Cell[] {
  const designs: readonly (readonly [name: string, turns: (n: number) => number[]])[] = [
    ["all 20 turns", (n) => times(n, 20)],
    ["10 and 40 turns", (n) => Array.from({ length: n }, (_, i) => (i % 2 === 0 ? 10 : 40))],
    ["10 turns, one of 50", (n) => [...times(n - 1, 10), 50]],
  ];
  const laws: readonly ErrorLaw[] = ["constant", "proportional", "squared", "mixture"];
  return [3, 5, 8].flatMap((n) =>
    designs.flatMap(([name, turns], design) =>
      laws
        .filter((law) => design > 0 || law === "proportional")
        .map(
          (errorLaw): Cell => ({
            interval: "this fill, own scatter",
            situation: `${n} catches, ${name}, error ${errorLaw}`,
            season: { turns: [turns(n)], fillSpread: 0.03, catchScatter: 0.015, errorLaw },
            claimed: design === 0 ? "nominal" : "at least",
          }),
        ),
    ),
  );
}

function readingTheScale(): Cell[] {
  const scatterKg = 0.015 * 0.3 * 20;
  const own = [0.1, 0.5, 1, 2, 4].flatMap((divisions) =>
    [3, 5].map(
      (n): Cell => ({
        interval: "this fill, own scatter",
        situation: `${n} catches, scatter ${divisions} scale divisions`,
        season: {
          turns: equal(1, n),
          fillSpread: 0.03,
          catchScatter: 0.015,
          divisionKg: scatterKg / divisions,
        },
        claimed: "at least",
      }),
    ),
  );
  const pooled = [0.25, 1, 4].map(
    (divisions): Cell => ({
      interval: "this fill, pooled scatter",
      situation: `1 catch after 12 fills of 5, scatter ${divisions} scale divisions`,
      season: {
        turns: [...equal(12, 5), [20]],
        fillSpread: 0.03,
        catchScatter: 0.015,
        divisionKg: scatterKg / divisions,
      },
      claimed: "at least",
    }),
  );
  return [...own, ...pooled];
}

function pooledScatter(): Cell[] {
  const pooled = (
    situation: string,
    season: Partial<Season>,
    claimed: Cell["claimed"],
    m: number,
  ): Cell => ({
    interval: "this fill, pooled scatter",
    situation: `${m === 1 ? "1 catch" : `${m} catches`}, ${situation}`,
    season: {
      turns: [...equal(4, 3), times(m, 20)],
      fillSpread: 0.03,
      catchScatter: 0.015,
      ...season,
    },
    claimed,
  });
  return [1, 2, 3].flatMap((m) => [
    pooled("4 earlier fills of 3", {}, "nominal", m),
    pooled("scatter differs between fills by 0.3 (log)", { scatterVaries: 0.3 }, "nominal", m),
    pooled("scatter differs between fills by 0.5 (log)", { scatterVaries: 0.5 }, "no", m),
    pooled("1 in 20 earlier catches holds its tare unnoticed", { tareLeftIn: 0.05 }, "at least", m),
    {
      ...pooled("4 earlier fills of 3", {}, "nominal", m),
      interval: "next catch" as const,
    },
  ]);
}

function acrossFills(): Cell[] {
  const spreads = [0, 0.01, 0.03, 0.05];
  const designs = [2, 3, 4, 6, 10].flatMap((k) => [
    { name: `${k} fills of 3`, turns: equal(k, 3) },
    { name: `${k} fills of 2 to 10`, turns: unbalanced(k) },
  ]);
  return designs.flatMap(({ name, turns }) =>
    spreads.flatMap((fillSpread) => {
      const season: Season = { turns, fillSpread, catchScatter: 0.015 };
      const situation = `${name}, fill-to-fill ${percent(fillSpread)}`;
      const cell = (interval: IntervalName, claimed: Cell["claimed"]): Cell => ({
        interval,
        situation,
        season,
        claimed,
      });
      return [
        // Wider than fills that are independent need, so that neighbouring ones may be alike.
        cell("mean over fills", "at least"),
        cell("mean over fills, REML", "at least"),
        cell("next fill", fillSpread >= 0.03 ? "nominal" : "at least"),
        cell("catch scatter", "nominal"),
        // The interval is about fills as measured; only where they are measured alike is its target one number.
        ...(name.endsWith("of 3") ? [cell("fill-to-fill spread", "nominal")] : []),
      ];
    }),
  );
}

function fillsThatAreNotNormal(): Cell[] {
  const shapes: readonly (readonly [string, Partial<Season>, Cell["claimed"]])[] = [
    ["heavy-tailed fills", { fillNoise: noises.heavyTails }, "nominal"],
    ["skew fills", { fillNoise: noises.skew }, "no"],
    ["one fill in ten 8 % off", { oddFill: 0.1 }, "no"],
    ["fills in two humps", { fillNoise: noises.twoHumps }, "no"],
  ];
  return shapes.flatMap(([name, shape, claimed]) =>
    [3, 5, 8].map(
      (k): Cell => ({
        interval: "next fill",
        situation: `${k} fills of 3, ${name}`,
        season: { turns: equal(k, 3), fillSpread: 0.03, catchScatter: 0.015, ...shape },
        claimed,
      }),
    ),
  );
}

function fillsThatRemember(): Cell[] {
  return [0.3, 0.6].flatMap((serialCorrelation) =>
    [4, 6, 10].flatMap((k) =>
      (["mean over fills", "next fill"] as const).map(
        (interval): Cell => ({
          interval,
          situation: `${k} fills of 3, each like the one before by ${serialCorrelation}`,
          season: { turns: equal(k, 3), fillSpread: 0.03, catchScatter: 0.015, serialCorrelation },
          claimed: interval === "mean over fills" && serialCorrelation <= 0.5 ? "at least" : "no",
        }),
      ),
    ),
  );
}

function whatNotToDo(): Cell[] {
  return [3, 6].flatMap((n) =>
    [0.01, 0.03].map(
      (fillSpread): Cell => ({
        interval: "all catches as fills",
        situation: `4 fills of ${n}, fill-to-fill ${percent(fillSpread)}`,
        season: { turns: equal(4, n), fillSpread, catchScatter: 0.015 },
        claimed: "no",
      }),
    ),
  );
}
