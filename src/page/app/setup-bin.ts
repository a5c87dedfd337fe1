import { type BinSetup, entryFor, type MoneyResponse } from "../../data/setup.ts";
import { type Edit, inBase, isObject, merged, type SetupFile, withoutDust } from "./setup-edit.ts";
import { type BinTyped, type MachineTyped, numberIn, numbersIn, type Typed } from "./typed.ts";

/** What was typed of a bin that is in the log. */
export interface TypedBin {
  readonly bin: string;
  readonly product: string;
  readonly typed: BinTyped;
}

/** What was typed of a bin, and of the drive that turns every meter, as changes of the setup. */
export function binEdits(
  { bin, product, typed }: TypedBin,
  machine: MachineTyped,
): readonly Edit[] {
  const of = (file: SetupFile, change: (old: BinSetup) => BinSetup): Edit => ({
    setup: (old) => ({ ...old, bins: withEntry(old.bins, bin, product, change) }),
    file: (old) => ({ ...old, bins: withFileEntry(old.bins, bin, product, file) }),
  });
  const target = typed.target === undefined ? null : numberIn(typed.target.text);
  const unit = typed.target?.unit ?? "kg/ha";
  const response = responseOf(typed);
  return [
    ...driveEdit(machine, of),
    ...(target === null
      ? []
      : [
          of({ target_rate: { value: target, unit } }, (old) => ({
            ...old,
            targetRate: { kind: "mass", kgPerHectare: inBase(target, unit, "kg/ha") },
          })),
        ]),
    ...(response === null
      ? []
      : [
          of(
            {
              money: {
                response: {
                  kind: response.kind,
                  heavy_cost_per_ha_per_percent: response.heavyCostPerHectarePerPercent,
                  light_cost_per_ha_per_percent: response.lightCostPerHectarePerPercent,
                },
              },
            },
            (old) => ({
              ...old,
              money: { pricePerKg: null, areaHectares: null, ...old.money, response },
            }),
          ),
        ]),
  ];
}

function driveEdit(
  { drive, steps }: MachineTyped,
  of: (file: SetupFile, change: (old: BinSetup) => BinSetup) => Edit,
): readonly Edit[] {
  switch (drive?.text) {
    case "motor":
      return [
        of({ drive: { kind: "motor" } }, (old) => ({
          ...old,
          drive: { kind: "motor", meterSpeedTurnsPerMin: null },
        })),
      ];
    case "ground-wheel": {
      const ratios = steps === undefined ? null : numbersIn(steps.text);
      return [
        of(
          { drive: { kind: "ground-wheel", ...(ratios === null ? {} : { steps: ratios }) } },
          (old) => ({
            ...old,
            drive: { kind: "ground-wheel", ratio: null, steps: ratios, stepNames: null },
          }),
        ),
      ];
    }
    case "none":
      return [of({ drive: undefined }, (old) => ({ ...old, drive: null }))];
    default:
      return [];
  }
}

/** Both costs, or none: with one alone an error to the other side would be free. */
function responseOf({
  tooMuch,
  tooLittle,
}: BinTyped): Extract<MoneyResponse, { kind: "linear" }> | null {
  if (tooMuch === undefined || tooLittle === undefined) return null;
  const [heavy, light] = [numberIn(tooMuch.text), numberIn(tooLittle.text)];
  if (heavy === null || light === null) return null;
  const perHectare = (value: number, { unit }: Typed) =>
    withoutDust(value / inBase(1, unit ?? "ha", "ha"));
  return {
    kind: "linear",
    heavyCostPerHectarePerPercent: perHectare(heavy, tooMuch),
    lightCostPerHectarePerPercent: perHectare(light, tooLittle),
  };
}

/** The page knows of one machine. */
const onePlace = (bin: string, product: string) => ({ bin, product, machine: null, farm: null });

const emptyBin = (bin: string): BinSetup => ({
  bin,
  product: null,
  targetRate: null,
  lowestRate: null,
  highestRate: null,
  bookValueKgPerTurn: null,
  assumed: null,
  turnsPerHectare: null,
  startsAfresh: null,
  drive: null,
  seed: null,
  money: null,
});

function withEntry(
  bins: readonly BinSetup[],
  bin: string,
  product: string,
  change: (old: BinSetup) => BinSetup,
): readonly BinSetup[] {
  const old = entryFor(bins, onePlace(bin, product));
  if (old === null) return [...bins, change(emptyBin(bin))];
  return bins.map((one) => (one === old ? change(one) : one));
}

interface FileEntry extends SetupFile {
  readonly bin: string;
  readonly product: string | null;
}

function withFileEntry(
  given: unknown,
  bin: string,
  product: string,
  change: SetupFile,
): readonly SetupFile[] {
  const bins: readonly SetupFile[] = Array.isArray(given) ? given.filter(isObject) : [];
  const named: readonly FileEntry[] = bins.map((one) => ({
    ...one,
    bin: String(one.bin),
    product: typeof one.product === "string" ? one.product : null,
  }));
  const old = entryFor(named, onePlace(bin, product));
  if (old === null) return [...bins, { bin, ...change }];
  return bins.map((one, i) => (named[i] === old ? merged(one, change) : one));
}
