import { randomStream } from "../../../src/numeric/random.ts";
import { coverageCell, type Row, type Run, type Section, shareCell } from "./claims.ts";
import { aloneOf, type Bands, fifths, lentOf, type Outcome } from "./outcomes.ts";
import { type WholeOutcome, wholeNextFill, wholeToday } from "./whole-logs.ts";

/** The two lines that stand side by side in a report. */
export const lines: readonly (readonly [
  name: "with other bins" | "by itself",
  bandsOf: (outcomes: readonly Outcome[]) => Bands,
])[] = [
  ["with other bins", lentOf],
  ["by itself", aloneOf],
];

/** One situation, read by the whole program with other bins and by itself. */
export interface Compared {
  readonly situation: string;
  readonly outcomes: readonly WholeOutcome[];
}

/** The three questions whose two lines are compared. */
export function compared({ replicates, seed }: Run): readonly Compared[] {
  return [
    {
      situation: "today's fill, three catches of a first morning",
      outcomes: wholeToday({}, 3, replicates, randomStream(seed, 900)),
    },
    {
      situation: "next fill, after the second",
      outcomes: wholeNextFill(2, replicates, randomStream(seed, 901)),
    },
    {
      situation: "next fill, after the fifth",
      outcomes: wholeNextFill(5, replicates, randomStream(seed, 902)),
    },
  ];
}

/** Logs in which the screening has something to do. */
export function badCatches({ replicates, seed }: Run): readonly Compared[] {
  return [
    {
      situation: "today's fill, a first morning, one catch in twenty far off",
      outcomes: wholeToday({ departure: "some far off" }, 3, replicates, randomStream(seed, 910)),
    },
    {
      situation: "today's fill after 3 earlier, one catch in twenty far off",
      outcomes: wholeToday(
        { departure: "some far off", earlier: 3, fillsOfOthers: 4 },
        3,
        replicates,
        randomStream(seed, 911),
      ),
    },
  ];
}

export const namesOfFifths = [
  "calmest fifth",
  "second",
  "third",
  "fourth",
  "wildest fifth",
] as const;

/** Coverage and width of one line, over all meters and over fifths of them. */
export function fifthsRow(
  situation: string,
  outcomes: readonly Outcome[],
  bandsOf: (outcomes: readonly Outcome[]) => Bands,
): Row {
  const parts = fifths(outcomes);
  return {
    situation,
    cells: [
      coverageCell("all", bandsOf(outcomes)),
      ...namesOfFifths.map((name, i) => coverageCell(name, bandsOf(parts[i] ?? []))),
    ],
  };
}

/** Both lines, side by side, on the same logs. */
export function comparisonSection(situations: readonly Compared[]): Section {
  return {
    name: "with other bins and by itself",
    rows: situations.flatMap(({ situation, outcomes }) =>
      lines.map(([line, bandsOf]) => fifthsRow(`${situation}, ${line}`, outcomes, bandsOf)),
    ),
  };
}

/** What screening and looking for changes do to the bands of the same logs. */
export function wholeLogSection(situations: readonly Compared[]): Section {
  return {
    name: "whole logs",
    rows: situations.flatMap(({ situation, outcomes }) =>
      lines.map(([line, bandsOf]): Row => {
        const bands = bandsOf(outcomes);
        const plain = bandsOf(outcomes.map((outcome) => outcome.plain));
        const share = (holds: (band: Bands[number], i: number) => boolean) =>
          bands.filter(holds).length / bands.length;
        return {
          situation: `${situation}, ${line}`,
          cells: [
            coverageCell("the whole program", bands),
            coverageCell("fills as they are", plain),
            shareCell(
              "another band",
              share((band, i) => differ(band, plain[i] ?? null)),
              bands.length,
            ),
            shareCell(
              "no band",
              share((band) => band === null),
              bands.length,
            ),
          ],
        };
      }),
    ),
  };
}

function differ(band: Bands[number], plain: Bands[number]): boolean {
  if (band === null || plain === null) return band !== plain;
  return Math.abs(band.halfWidth / plain.halfWidth - 1) > sameBand;
}

/** The same sums in another order. */
const sameBand = 1e-9;
