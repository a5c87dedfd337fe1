import { studentTQuantile } from "../../numeric/distributions/student-t.ts";

/**
 * good enough: the fill is known within the tolerance · catch longer: more turns a catch · catch more: more catches of these
 * turns · weigh better: a scale with a finer division.
 */
export type CatchingAdvice = "good enough" | "catch longer" | "catch more" | "weigh better";

/** Why that, in a word the wording layer makes a sentence of. */
export type AdviceReason =
  | "within tolerance"
  | "scatter unknown"
  | "reading the scale dominates and longer catches cure it"
  | "reading the scale dominates"
  | "a few more catches are enough"
  | "more catches need fewer turns in all"
  | "longer catches need fewer turns in all";

/** What each remedy alone would take to know the fill within the tolerance; null: it cannot, or nobody can tell. */
export interface Remedies {
  /** Catches in all, of the same turns. */
  readonly catches: number | null;
  /** Turns of each catch, with the same number of catches. */
  readonly turnsPerCatch: number | null;
  /** Division of the scale, kg, with the same catches. */
  readonly divisionKg: number | null;
}

/** A fill's uncertainty taken apart; everything the remedies are computed from. */
export interface CatchingState {
  readonly catches: number;
  /** Turns of a typical catch. */
  readonly turns: number;
  /** kg/turn. */
  readonly delivery: number;
  /** Error variance of a one-turn catch, kg²/turn, and its degrees of freedom; null: unknown. */
  readonly scatter: {
    readonly variance: number;
    readonly df: number;
    readonly own: boolean;
  } | null;
  /** 0: unknown or none. */
  readonly divisionKg: number;
  readonly level: number;
  readonly tolerance: number;
}

const mostCatchesTried = 30;
/** The seventh catch narrows the interval by less than a twelfth and costs as much handling as the first. */
const mostCatchesAdvised = 6;
/** A bag and a bin that take one catch take three times as much, seldom more. */
const mostTimesLonger = 3;
const dominates = 0.5;

export function remediesFor(state: CatchingState): Remedies {
  return {
    catches: catchesFor(state),
    turnsPerCatch: turnsFor(state),
    divisionKg: divisionFor(state),
  };
}

/**
 * Which remedy comes first. Reading the scale is not averaged out by more catches of the same length, and its part of the
 * variance falls with the square of the turns, so where it is more than half, length or the scale itself must help.
 * Where the meter's own scatter is more than half, up to six catches come before longer ones: for the same turns they tell
 * as much of the delivery, and also show the scatter and the catch that is wrong. Beyond six, whatever needs fewer turns.
 *
 * @param halfWidth   relative half-width of the fill's interval; null: unknown
 * @param scaleShare  part of the fill's variance that reading the scale makes up; null: unknown
 */
export function adviceFor(
  state: CatchingState,
  remedies: Remedies,
  halfWidth: number | null,
  scaleShare: number | null,
): { readonly advice: CatchingAdvice; readonly reason: AdviceReason } {
  if (halfWidth !== null && halfWidth <= state.tolerance)
    return { advice: "good enough", reason: "within tolerance" };
  if (halfWidth === null) return { advice: "catch more", reason: "scatter unknown" };
  if (scaleShare !== null && scaleShare > dominates)
    return (remedies.turnsPerCatch ?? Number.POSITIVE_INFINITY) <= mostTimesLonger * state.turns
      ? { advice: "catch longer", reason: "reading the scale dominates and longer catches cure it" }
      : { advice: "weigh better", reason: "reading the scale dominates" };
  if (remedies.catches !== null && remedies.catches <= mostCatchesAdvised)
    return { advice: "catch more", reason: "a few more catches are enough" };
  const [ofMore, ofLonger] = turnsInAll(state, remedies);
  return ofMore < ofLonger
    ? { advice: "catch more", reason: "more catches need fewer turns in all" }
    : { advice: "catch longer", reason: "longer catches need fewer turns in all" };
}

/** Turns to be made by more catches and by longer ones; a remedy that cannot do it takes infinitely many. */
function turnsInAll(state: CatchingState, { catches, turnsPerCatch }: Remedies): [number, number] {
  return [
    (catches ?? Number.POSITIVE_INFINITY) * state.turns,
    state.catches * (turnsPerCatch ?? Number.POSITIVE_INFINITY),
  ];
}

function catchesFor(state: CatchingState): number | null {
  const { scatter, divisionKg, turns, delivery, level, tolerance, catches } = state;
  if (scatter === null) return null;
  for (let n = 1; n <= mostCatchesTried; n++) {
    const df = scatter.own ? n - 1 : scatter.df + n - catches;
    if (df < 1) continue;
    const variance = scatter.variance / (n * turns) + divisionKg ** 2 / 6 / turns ** 2;
    const half = studentTQuantile((1 + level) / 2, df) * Math.sqrt(variance);
    if (half <= tolerance * delivery) return n;
  }
  return null;
}

/** s²/(n·t) + d²/(6·t²) = allowed, solved for t. */
function turnsFor(state: CatchingState): number | null {
  const allowed = allowedVariance(state);
  if (allowed === null || state.scatter === null) return null;
  const ofScatter = state.scatter.variance / state.catches;
  const ofReading = state.divisionKg ** 2 / 6;
  const turns = (ofScatter + Math.sqrt(ofScatter ** 2 + 4 * allowed * ofReading)) / (2 * allowed);
  return Math.ceil(turns);
}

function divisionFor(state: CatchingState): number | null {
  const allowed = allowedVariance(state);
  if (allowed === null || state.scatter === null) return null;
  const left = allowed - state.scatter.variance / (state.catches * state.turns);
  return left > 0 ? Math.sqrt(6 * left) * state.turns : null;
}

/** Variance of the delivery, (kg/turn)², at which the half-width is the tolerance. */
function allowedVariance({ scatter, delivery, level, tolerance }: CatchingState): number | null {
  if (scatter === null || scatter.df < 1) return null;
  return ((tolerance * delivery) / studentTQuantile((1 + level) / 2, scatter.df)) ** 2;
}
