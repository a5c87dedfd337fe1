import type { MeterPlace } from "../data/identity.ts";
import { type AnsweredSetup, holdsFor, namesFill, type Setup } from "../data/setup.ts";
import { type Fill, severalSeasons } from "../model/meters.ts";
import type { CatchesNeededInBrief } from "../questions/catches-needed.ts";
import type { DeliveryInBrief } from "../questions/delivery/in-brief.ts";
import type { Setting } from "../questions/setting.ts";
import { type Ask, type Caution, type CautionCode, isAbout } from "../results/caution.ts";

/** What to do now, the strongest first. */
export type Action = "look-first" | "catch-more" | "set";

/** So many more catches of so many turns. */
export interface DecidedCatches {
  readonly further: number;
  readonly turns: number;
  /** Relative half-width they are to reach, as in `NumberOfCatches`; null: nobody can tell before they are there. */
  readonly reaches: number | null;
  /** Chance that they do; null likewise. */
  readonly chance: number | null;
}

/** What the drive is to be set to. */
export interface DecidedSetting {
  readonly quantity: "delivery-per-turn" | "turns-per-hectare" | "drive-ratio" | "step";
  readonly value: number;
  readonly unit: "kg/turn" | "turns/ha" | "ratio";
  /** Name of the step; null: it has none, or the drive has no steps. */
  readonly name: string | null;
  /** Another step was caught; left out: this one, or it is not told which. */
  readonly assumed?: true;
}

/** The one decision about the fill in the bin; every surface speaks from it. */
export interface Decision {
  readonly action: Action;
  /** Null where no further catch is asked for; where something must be looked at first, those to take then. */
  readonly catches: DecidedCatches | null;
  /** Null before the action is to set. */
  readonly setting: DecidedSetting | null;
  /** Findings that made the action, the strongest first. */
  readonly reasons: readonly CautionCode[];
  /** Further findings worth knowing. */
  readonly also: readonly CautionCode[];
}

/** A finding that a person answered in the setup, so that it asks for nothing any more. */
export interface AnsweredFinding {
  readonly code: CautionCode;
  readonly note: string;
}

/** What a decision is made from. */
export interface DecisionGround {
  readonly delivery: DeliveryInBrief;
  /** The fill it is about, as the setup may name it. */
  readonly about: {
    readonly place: MeterPlace;
    readonly newest: Pick<Fill, "fill" | "number" | "season">;
  };
  /** Null: could not be computed. */
  readonly catchesNeeded: CatchesNeededInBrief | null;
  /** Null: could not be computed. */
  readonly setting: Setting | null;
  /** Every finding of the bin, and of the file. */
  readonly findings: readonly Caution[];
  readonly setup: Pick<Setup, "answered"> | null;
}

/** Asked for where no count can be reckoned: three catches in all can say how much they scatter. */
const catchesToKnowScatter = 3;
/** The fewest that can show that an odd catch was one, or a scatter that the scale hid. */
const oneMore = 1;
/** Longer catches show what the scale hides. */
const timesLonger = 2;

/** Findings that say why the catches are enough. */
export const reasonsEnough: readonly CautionCode[] = ["stopped-on-width", "enough-by-money"];
/** The same, and those that say why no more are asked for all the same. */
const reasonsToSet: readonly CautionCode[] = [
  ...reasonsEnough,
  "tolerance-not-reachable",
  "step-leaves-chance",
];
/** Findings that qualify a setting and leave a cause to be found. */
export const causesToFind: readonly CautionCode[] = [
  "moved-since",
  "trending",
  "fill-differs-confirmed",
];
/** Findings that qualify a setting: set to today's value. */
const qualifiers: readonly CautionCode[] = [...causesToFind, "stood-apart"];

/**
 * One decision about the fill in the bin: the strongest ask of all findings about it, from every question.
 *
 * Look first while a finding asks for it that nobody answered; else catch more while one asks for that and the limits of a
 * fill allow it; else set. A finding that wants one more catch when all allowed ones are taken asks to look.
 */
export function decide(ground: DecisionGround): Decision {
  const { catchesNeeded } = ground;
  const relevant = openFindings(ground);
  // Of the fill that catches are planned for, which is not the one answered where the newest was left out.
  const full =
    catchesNeeded !== null && catchesNeeded.input.catches >= catchesNeeded.options.mostCatches;
  const asking = (ask: Ask) =>
    relevant.filter(({ asks }) => (full && asks === "catch-more" ? "look-first" : asks) === ask);
  const action = strongest(asking);
  const reasons = codesOf(
    action === "set"
      ? relevant.filter(({ code }) => [...qualifiers, ...reasonsToSet].includes(code))
      : asking(action),
  );
  return {
    action,
    catches: furtherCatches(ground, asking("catch-more")),
    setting: action === "set" ? settingToday(ground) : null,
    reasons,
    also: codesOf(
      relevant.filter(({ code, severity }) => severity !== "note" && !reasons.includes(code)),
    ),
  };
}

/** The findings of a fill that the setup answers, with the notes given there. */
export function answeredFindings(ground: DecisionGround): readonly AnsweredFinding[] {
  return findingsOfFill(ground).flatMap((found) => {
    const answer = answerTo(found, ground);
    return answer === null ? [] : [{ code: found.code, note: answer.note }];
  });
}

function openFindings(ground: DecisionGround): readonly Caution[] {
  return findingsOfFill(ground).filter((found) => answerTo(found, ground) === null);
}

/** Findings about this bin, product and fill, or about all of them. */
function findingsOfFill({ delivery, findings }: DecisionGround): readonly Caution[] {
  return findings.filter((found) => isAbout(found, delivery));
}

/** A finding about a catch is ended at the catch; the setup answers the others. */
function answerTo(
  { code, where }: Caution,
  { setup, about: { place, newest } }: DecisionGround,
): AnsweredSetup | null {
  if (where.catches.length > 0) return null;
  const several = severalSeasons([newest]);
  return (
    setup?.answered.find(
      (one) =>
        one.code === code &&
        holdsFor({ ...one, product: null }, place) &&
        (one.fill === null || namesFill(one, newest, several)),
    ) ?? null
  );
}

function strongest(asking: (ask: Ask) => readonly Caution[]): Action {
  if (asking("look-first").length > 0) return "look-first";
  return asking("catch-more").length > 0 ? "catch-more" : "set";
}

function codesOf(findings: readonly Caution[]): readonly CautionCode[] {
  return [...new Set(findings.map(({ code }) => code))];
}

/** Also where something must be looked at first: the catches are wanted all the same. */
function furtherCatches(
  { delivery, catchesNeeded }: DecisionGround,
  asking: readonly Caution[],
): DecidedCatches | null {
  if (asking.length === 0) return null;
  const reasons = codesOf(asking);
  const needed = catchesNeeded?.needed ?? null;
  if (needed !== null) {
    const { further, turns, reaches, chance } = needed;
    return { further, turns, reaches, chance };
  }
  const turns = catchesNeeded?.basis.turnsPerCatch ?? delivery.nextCatch.turns;
  const longest = catchesNeeded?.basis.longestTurns ?? turns;
  const made = reasons.includes("newest-fill-left-out") ? 0 : delivery.input.catches;
  const hidden = reasons.includes("zero-scatter-unscaled");
  return {
    further: Math.max(oneMore, catchesToKnowScatter - made),
    turns: hidden ? Math.max(turns, Math.min(timesLonger * turns, longest)) : turns,
    reaches: null,
    chance: null,
  };
}

function settingToday({ setting, delivery }: DecisionGround): DecidedSetting {
  const perTurn: DecidedSetting = {
    quantity: "delivery-per-turn",
    value: delivery.estimate.value,
    unit: "kg/turn",
    name: null,
  };
  if (setting === null || setting.target === null || setting.options.drive === null) return perTurn;
  const step = setting.nearest === null ? undefined : setting.steps[setting.nearest.nearest];
  if (step !== undefined)
    return {
      quantity: "step",
      value: step.setting,
      unit: "ratio",
      name: step.name,
      ...(step.assumed ? { assumed: true } : {}),
    };
  if (setting.ratio !== null)
    return { quantity: "drive-ratio", value: setting.ratio.value, unit: "ratio", name: null };
  return setting.turnsPerHectare === null
    ? perTurn
    : {
        quantity: "turns-per-hectare",
        value: setting.turnsPerHectare.value,
        unit: "turns/ha",
        name: null,
      };
}
