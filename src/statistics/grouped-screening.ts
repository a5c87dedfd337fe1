import { sum } from "simple-statistics";
import { type JudgedPoint, lineOf, residualFrom } from "./predicting-line.ts";

/** A point by its group and its place within it. */
export interface PlaceInGroup {
  readonly group: number;
  readonly index: number;
}

export interface ScreeningRule {
  /** Chance that a good point, looked at alone, is kept; in (0, 1) and close to 1. */
  readonly pointLevel: number;
  /** Share of all points that may be set aside, at least two of them. */
  readonly mostShare: number;
  /** Points that one group of so many may lose. */
  readonly mostOfGroup: (points: number) => number;
}

/** What is left of one group while points are taken away. */
interface Group {
  readonly points: readonly JudgedPoint[];
  readonly places: readonly number[];
  readonly sumOfSquares: number;
  readonly mayLose: number;
  /** The point whose removal takes most off the sum of squares, and how much. */
  readonly worst: { readonly index: number; readonly drop: number } | null;
}

/**
 * Which points must not speak for the common scatter of several lines? A backward procedure over all groups at once,
 * each with its own slope and all with one scatter: take away the point with the largest deleted residual anywhere,
 * until a share of them is gone; those up to the last whose p value is below 1 − pointLevel are set aside. Going on past
 * quiet steps is what finds bad points that hide each other by inflating the scatter.
 *
 * @param groups  any number of lines with any number of points
 * @returns       points to set aside, in the order they were taken; of a pair that differs too much, both
 * @throws        NumericalError when a point cannot be used
 * Source         Rosner, Technometrics 25 (1983) 165, carried over to deleted residuals; compared with other ways of
 *                screening in reports/outlier-study.md
 */
export function screenGroups(
  groups: readonly (readonly JudgedPoint[])[],
  { pointLevel, mostShare, mostOfGroup }: ScreeningRule,
): readonly PlaceInGroup[] {
  const left = groups.map((points) =>
    groupOf(points, [...points.keys()], mostOfGroup(points.length)),
  );
  const most = Math.max(2, Math.floor(mostShare * sum([0, ...groups.map((g) => g.length)])));
  const taken: (readonly PlaceInGroup[])[] = [];
  let exceeding = 0;
  let common = scatterOf(left);
  while (taken.length < most) {
    const group = indexOfWorst(left);
    const chosen = left[group];
    if (!chosen?.worst) break;
    const { index } = chosen.worst;
    const others = without(common, chosen);
    if (standsOut(chosen, index, others, 1 - pointLevel)) exceeding = taken.length + 1;
    const stay = chosen.places.length === 2 ? [] : chosen.places.filter((i) => i !== index);
    const gone = chosen.places.filter((i) => !stay.includes(i));
    taken.push(gone.map((place) => ({ group, index: place })));
    const shrunk = groupOf(chosen.points, stay, chosen.mayLose - 1);
    left[group] = shrunk;
    common = scatterOf([shrunk], others);
  }
  return taken.slice(0, exceeding).flat();
}

/** Sum of squares of several groups about their own slopes, with its degrees of freedom. */
interface Scatter {
  readonly squares: number;
  readonly df: number;
}

function scatterOf(groups: readonly Group[], start: Scatter = { squares: 0, df: 0 }): Scatter {
  return groups.reduce(
    ({ squares, df }, group) => ({
      squares: squares + group.sumOfSquares,
      df: df + Math.max(0, group.places.length - 1),
    }),
    start,
  );
}

function without({ squares, df }: Scatter, group: Group): Scatter {
  return {
    squares: Math.max(0, squares - group.sumOfSquares),
    df: df - Math.max(0, group.places.length - 1),
  };
}

function indexOfWorst(groups: readonly Group[]): number {
  let worst = 0;
  for (const [i, group] of groups.entries())
    if ((group.worst?.drop ?? -1) > (groups[worst]?.worst?.drop ?? -1)) worst = i;
  return worst;
}

function standsOut(
  { points, places }: Group,
  index: number,
  { squares, df }: Scatter,
  significance: number,
): boolean {
  const rest = places.filter((i) => i !== index);
  const line = lineOf(present(points, rest), df > 0 ? { variance: squares / df, df } : null);
  const [suspect] = present(points, [index]);
  const residual = suspect ? residualFrom(line, suspect) : null;
  return residual !== null && residual.pValue < significance;
}

// Removing point i takes r_i²/x_i/(1 − h_i) off a group's sum of squares, h_i = x_i/Σx.
function groupOf(
  points: readonly JudgedPoint[],
  places: readonly number[],
  mayLose: number,
): Group {
  if (places.length < 2) return { points, places, sumOfSquares: 0, mayLose, worst: null };
  const { slope, information } = lineOf(present(points, places), null);
  const squares = present(points, places).map(({ x, y }) => ({
    square: (y - slope * x) ** 2 / x,
    leverage: x / information,
  }));
  const sumOfSquares = sum(squares.map(({ square }) => square));
  const [worst] = places
    .map((index, i) => {
      const { square, leverage } = squares[i] ?? { square: 0, leverage: 0 };
      return { index, drop: square / (1 - leverage) };
    })
    .sort((a, b) => b.drop - a.drop);
  return { points, places, sumOfSquares, mayLose, worst: mayLose > 0 ? (worst ?? null) : null };
}

function present(
  points: readonly JudgedPoint[],
  places: readonly number[],
): readonly JudgedPoint[] {
  return places.flatMap((place) => points[place] ?? []);
}
