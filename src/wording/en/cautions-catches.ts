import type { Counts, Facts } from "./facts.ts";
import { mishaps } from "./mishaps.ts";
import { remarks } from "./remarks.ts";

type Off = Facts<"off" | "p">;
type Apart = Facts<"apart" | "p">;
type Without = Facts<"without" | "change"> & { readonly both: boolean };
type Expected = Facts<"expected">;
type Gives = Facts<"catches" | "value"> & { readonly first: boolean };

const differ = (f: Apart) => `These two catches differ by ${f.apart}`;
const withoutIt = (f: Without) =>
  `without ${f.both ? "both" : "it"} the delivery is ${f.without} (${f.change})`;
const byChance = (f: Expected) => `among so many fills ${f.expected} show one by chance`;
const beyondDoubt = (f: Facts<"p">) => `beyond doubt among all catches of the log (${f.p})`;

/** Sentences of cautions about catches that are not to be believed as they stand. */
export const cautionsCatches = {
  mishaps: mishaps.names,
  remarks,
  // one catch
  stands: (f: Off) => `This catch stands ${f.off} off what the others predict (${f.p}).`,
  standsAsOneInTwenty: (f: Off) =>
    `This catch stands ${f.off} off what the others predict (${f.p}); about one clean fill in twenty shows such a catch, more where errors have heavy tails.`,
  stoodAmongAll: (f: Off) =>
    `This catch stood ${f.off} off what the others of its fill predict (${f.p} among all catches of the log).`,
  stoodAlone: (f: Off & Expected) =>
    `This catch stood ${f.off} off, but only when its fill is looked at alone (${f.p}); ${byChance(f)}.`,
  fits: (mishaps: string) => `It would fit ${mishaps}.`,
  noMishapFits: "No mishap we know fits.",
  nothingChanged: (f: Without) => `Nothing was changed or dropped; ${withoutIt(f)}.`,
  lookAtIt:
    "Look at it before the drive is set, and catch again; or leave it out with a reason (exclude), or say in the column checked what was looked at.",
  moreCatchesShow: "More catches of this fill show which is right.",
  checked: (f: Without & Facts<"checked">) =>
    `It was checked (${f.checked}) and counts; ${withoutIt(f)}.`,
  // left out of every figure
  timesFellows: (times: string) => `${times} times what its fellows predict`,
  lessThanFellows: (percent: string) => `${percent} less than its fellows predict`,
  moreThanFellows: (percent: string) => `${percent} more than its fellows predict`,
  catchSetAside: (f: Facts<"weighed" | "p">) =>
    `This catch weighed ${f.weighed}, ${beyondDoubt(f)}, and is left out of every figure about other fills.`,
  fillSetAside: (f: Apart) =>
    `The two catches of this fill differ by ${f.apart}, ${beyondDoubt(f)}. Nobody can say which one is wrong, so the fill is left out of every figure about other fills.`,
  withIt: "With it",
  withSoMany: (catches: number) => `With the ${catches} catches that are left out so`,
  withAllLeftOut: "With all that is left out so",
  nextFill: (f: Facts<"withThem" | "withAll" | "now">) =>
    `${f.withThem} the next fill would be known to ${f.withAll} instead of ${f.now}.`,
  excludeIt:
    "Exclude it with a reason, or say in the column checked what was looked at; then it counts.",
  excludeOne: "Exclude one of them with a reason, or say in the column checked what was looked at.",
  // catches that disagree
  disagree: (f: Facts<"catches" | "apart">) =>
    `Catches ${f.catches} lie ${f.apart} apart: one of these is wrong; catch again. Until then no ± is given.`,
  oneGives: (f: Gives) => `${f.first ? "Catch" : "catch"} ${f.catches} gives ${f.value}`,
  twoGive: (f: Gives) => `${f.first ? "Catches " : ""}${f.catches} give ${f.value}`,
  twoDisagree: (f: Apart) =>
    `${differ(f)}, more than this meter's scatter allows (${f.p}). Nobody can say which one is wrong: take a third. Until then no ± is given.`,
  twoLieApart: (f: Apart) =>
    `${differ(f)}: they disagree more than your other catches do (${f.p}), as one clean pair in twenty does. Take a third.`,
  twoChecked: (f: Apart & Facts<"checked">) =>
    `${differ(f)}, more than your other catches do (${f.p}). Both were checked (${f.checked}) and count.`,
  twoDisagreedEarlier: (f: Apart) =>
    `The two catches of this fill differed by ${f.apart} (${f.p} among all catches of the log); which one was wrong nobody can say.`,
  twoDisagreeAlone: (f: Apart & Expected) =>
    `The two catches of this fill differed by ${f.apart} (${f.p} when the fill is looked at alone); ${byChance(f)}.`,
  // the fill as a whole
  moreThanCanBeTold: (catches: number) =>
    `More catches of this fill stand out than can be told apart among ${catches}. Do not trust the fill as a whole: look for a cause, with everything at rest before you reach into the meter, and catch again.`,
  oneCatch: "One catch cannot be judged by itself.",
  tooFew: (f: Counts<"catches"> & Facts<"apart" | "gross"> & { readonly alone: boolean }) =>
    `${f.catches} catches and ${f.alone ? "no earlier fill" : "hardly anything from earlier fills"} are too few to judge one of them; only an error above about ${f.gross} would show. They lie ${f.apart} apart.`,
};
