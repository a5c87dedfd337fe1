import type { Counts, Facts } from "./facts.ts";
import { lawful } from "./lawful.ts";
import { setting } from "./setting.ts";
import { leftOut } from "./uncertainty-sources.ts";

type Off = Facts<"off"> & { readonly less: boolean };

const lessOrMore = (f: Off) => `${f.off} ${f.less ? "less" : "more"}`;

/** Cautions about the way from delivery to the drive, to the field, and to the outlets. */
export const cautionsField = {
  labels: {
    lawful,
    setting: setting.missing as Readonly<Record<string, string>>,
    leftOut,
    /** Figures of a field check. */
    figures: {
      filled: "the mass filled in",
      left: "the mass left over",
      area: "the area",
    } as Readonly<Record<string, string>>,
    noRateHeld:
      "No rate can be held at every working speed: the drive's meter speeds lie too near together for so wide a range of speeds.",
    bends: (p: string) =>
      `Delivery bends with meter speed (${p}), so a straight line, and the range of speeds worked out with it, do not fit.`,
  },
  // setting
  "setting-needs": (missing: string) => `Not given, so what needs it is left out: ${missing}.`,
  "delivery-not-told-from-zero": () =>
    "The catches are so few or so scattered that no delivery can be ruled out down to zero, so the setting has no upper limit. Take more catches before the drive is set.",
  "slip-not-given": () =>
    "Slip of the drive wheel is not given and counts as none. A wheel that slips by 3 % of the way puts out 3 % less than it is set for: measure its travel in work, loaded, openers in the ground, nobody beside the machine while it moves.",
  "target-out-of-reach": (
    f: Facts<"target" | "reach"> & { readonly drive: "ground-wheel" | "motor" },
  ) =>
    `The target of ${f.target} lies outside what this drive can put out with this delivery: ${f.reach}. Another roller, put in with everything at rest, or another ${f.drive === "motor" ? "working speed" : "ratio"} would be needed.`,
  "rate-against-law": (f: Facts<"rate" | "limits"> & { readonly of: "target" | "step" }) =>
    f.of === "target"
      ? `The target of ${f.rate} breaks what label or law sets: ${f.limits}. Aim for a rate that keeps it.`
      : `The nearest step puts out ${f.rate} and breaks what label or law sets: ${f.limits}. Aim for a rate whose step keeps it.`,
  "target-on-limit": (f: Facts<"rate" | "limits" | "chance">) =>
    `The target of ${f.rate} is the limit itself (${f.limits}): ${f.chance}, and no number of catches changes that. Aim farther inside.`,
  "rate-may-break-law": (f: Facts<"limits" | "chance" | "borne">) =>
    `Set by these catches, the rate may break what label or law sets (${f.limits}): ${f.chance}, and ${f.borne} would be borne. Catch more, or aim farther inside.`,
  "no-step-within-tolerance": (f: Facts<"error" | "tolerance">) =>
    `Even the nearest step is off by ${f.error}, more than the tolerance of ${f.tolerance}.`,
  "step-not-caught": (f: Facts<"step" | "caught">) =>
    `Step ${f.step} was not caught: what it puts out is assumed, from step ${f.caught} by the ratio of the two, and its interval holds no error of that ratio or of another meter speed. Make one catch at step ${f.step}.`,
  "drive-set-off": (f: Off & Facts<"tolerance">) =>
    `As it stands now, the drive puts out ${lessOrMore(f)} than the target, outside the tolerance of ${f.tolerance}. Set it anew.`,
  "meter-speed-not-recorded": (speeds: string) =>
    `The setting turns the meter at ${speeds} turns/min. How fast it was turned for the catches is not recorded (column meter_rpm), so whether the delivery holds there is not known.`,
  "setting-outside-caught-speeds": (f: Facts<"set" | "caught">) =>
    `The setting turns the meter at ${f.set} turns/min, but the catches were turned at ${f.caught} turns/min. Whether the delivery holds at the setting was not seen: catch again nearer to it.`,
  // speed linearity
  "one-meter-speed": (speed: string) =>
    `Every catch was turned at ${speed} turns/min, so nothing can be said about other meter speeds.`,
  "speeds-too-alike": (speeds: string) =>
    `The meter speeds of the catches, ${speeds} turns/min, are too alike to show what speed does.`,
  "speed-never-varied-within-a-fill": () =>
    "Meter speed changed from fill to fill only, so what speed did and what the fills did cannot be told apart. Turn one fill at two speeds.",
  "too-few-for-speed": (f: Counts<"catches" | "needed">) =>
    `${f.catches} catches of fills turned at several speeds are too few to tell what speed does; it takes ${f.needed}.`,
  "speed-catches-agree": (f: Counts<"catches">) =>
    `The ${f.catches} catches at unlike meter speeds agree exactly, so their scatter is hidden by the scale and speed cannot be judged.`,
  "speed-changes-delivery": (f: Facts<"change" | "range" | "p">) =>
    `The delivery changes with the meter's speed: ${f.change} from the slowest to the fastest catches (${f.range}, ${f.p}). Catch at the speed of work.`,
  "speed-not-straight": (p: string) =>
    `Delivery does not follow one straight line over meter speed (${p}): it bends, or fills answer to speed differently. The range of speeds worked out with the line does not fit.`,
  "speed-goes-with-turns": (f: Facts<"correlation"> & { readonly slowly: boolean }) =>
    `Long catches were turned ${f.slowly ? "slowly" : "fast"} (correlation ${f.correlation}), so an effect of speed cannot be told from a mass that is the same in every catch. Turn long and short catches at both speeds.`,
  // uncertainty budget
  "budget-leaves-out": (sources: string) =>
    `Not in the budget, because nothing given says how uncertain it is: ${sources}. The real uncertainty is larger.`,
  "budget-unknown": () =>
    "Without any catch scatter there is no uncertainty budget; it comes with further catches.",
  "budget-not-confirmed": (difference: string) =>
    `Drawing the sources at random gives limits up to ${difference} of the rate away from the budget's. Use the drawn ones.`,
  "scale-error-not-corrected": (error: string) =>
    `A known mass showed the scale to be off by ${error}. That was not taken off any catch; the budget counts it as an uncertainty of that size.`,
  // field check
  "field-check-without-uncertainty": (figures: string) =>
    `The uncertainty of ${figures} is not given for a field check, so whether it agrees with the catches cannot be judged. Give standard_uncertainty beside the figure.`,
  "predicted-rate-unknown": () =>
    "Nothing says how the drive was set for a field check, so the catches predict no rate for it. Give assumed_delivery with the check, or turns_per_hectare with the bin.",
  "field-check-fill-unknown": (f: Counts<"fill">) =>
    `A field check names fill ${f.fill}, which has no catch that counts; what any fill of this bin delivers stands in for it.`,
  "field-disagrees": (f: Off & Facts<"error">) =>
    `Field and catches disagree by more than their uncertainties (normalised error ${f.error}): the field got ${lessOrMore(f)} than the catches said. Look for wheel slip, overlap or a wrong area, product left in the bin (looked at from outside: it can bridge and give way, and is never cleared from inside), or a meter that delivers differently under way.`,
  "field-differs": (f: Off & Facts<"error" | "p">) =>
    `The field got ${lessOrMore(f)} than the catches said, a little more than their uncertainties explain (normalised error ${f.error}; ${f.p} among all field checks). Make another field check before looking for a cause.`,
  "field-disagreed-before": (bias: string) =>
    `An earlier field check of this bin was off by ${bias}; the latest one counts.`,
  "one-field-check": (bias: string) =>
    `One field check (${bias} against the catches) cannot tell a standing difference from chance. Make another before correcting by it.`,
  "two-field-checks": () =>
    "Two field checks give a correction with a very wide interval. A third one tells much more.",
  // outlets
  "few-outlets": (f: Counts<"outlets">) =>
    `${f.outlets} outlets say little about how evenly all of them deliver; the interval is wide on purpose.`,
  "outlets-caught-once": () =>
    "Each outlet was caught once, so part of the differences between them is catch scatter. Catch a few outlets twice to see how much; bags go on and off with everything at rest.",
  "outlets-agree-exactly": (f: Counts<"outlets">) =>
    `The ${f.outlets} outlets agree exactly, which says that the scale is coarse, not that they are perfectly even.`,
  "outlets-outside-band": (f: Facts<"band" | "names"> & Counts<"outlets">) =>
    `Outside ${f.band}: ${f.outlets === 1 ? "outlet" : "outlets"} ${f.names}. With engine off and everything at rest, since hands come near moving parts there, look for a blocked, worn or wrongly set one.`,
};
