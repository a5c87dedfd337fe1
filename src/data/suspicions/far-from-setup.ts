import { type Caution, caution } from "../../results/caution.ts";
import { turnsPerHectareOfRatio } from "../../units/rates.ts";
import { type BinSetup, binSetup, type Setup } from "../setup.ts";
import { type CountedLog, medianDelivery } from "./suspect.ts";
import { isTimes, unitMeant } from "./unit-factors.ts";

/**
 * Book values, and settings of the year before, are off by a third at most. Less than twice, so that pounds read as kilograms are
 * told beside a book value that is a fifth too high.
 */
const otherFigure = 1.8;

/** Deliveries that a book value, or the target at the turns that are set now, contradicts by nearly twice or half of itself. */
export function farFromSetup(setup: Setup, log: CountedLog): readonly Caution[] {
  return log.meters.flatMap(({ catches, where }) => {
    const [row] = catches;
    const entry = row === undefined ? null : binSetup(setup, row);
    if (entry === null) return [];
    const delivery = medianDelivery(catches);
    const read = log.massUnit;
    const [found] = knownFrom(entry, setup)
      .map(({ heldAgainst, kgPerTurn }) => ({ heldAgainst, times: delivery / kgPerTurn }))
      .filter(({ times }) => isTimes(times, otherFigure));
    if (found === undefined) return [];
    const meant = unitMeant(found.times, read);
    return caution("delivery-far-off", where, { ...found, read, meant });
  });
}

/** What a setup lets expect of a turn. */
function knownFrom(entry: BinSetup, { cart }: Setup) {
  const { bookValueKgPerTurn: book, targetRate: target } = entry;
  const turns = turnsPerHectare(entry, cart);
  return [
    ...(book === null ? [] : [{ heldAgainst: "book-value" as const, kgPerTurn: book.value }]),
    ...(turns === null || target?.kind !== "mass"
      ? []
      : [{ heldAgainst: "target" as const, kgPerTurn: target.kgPerHectare / turns }]),
  ];
}

/** As set now; slip is a few percent, and nothing here turns on that. */
function turnsPerHectare({ turnsPerHectare: given, drive }: BinSetup, cart: Setup["cart"]) {
  const { workingWidthM: width, wheelCircumferenceM: wheel } = cart;
  const ratio = drive?.kind === "ground-wheel" ? drive.ratio : null;
  if (given !== null || ratio === null || width === null || wheel === null) return given;
  return turnsPerHectareOfRatio(ratio, width.value, wheel.value);
}
