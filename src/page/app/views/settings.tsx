import { useSignal } from "@preact/signals";
import { defaults } from "../../../results/defaults.ts";
import type { Session } from "../session.ts";
import {
  type BinField,
  binFields,
  isAllowed,
  type MachineField,
  machineFields,
  type Typed,
  unitOf,
} from "../typed.ts";
import { Field } from "./field.tsx";
import { Panel } from "./panel.tsx";

const groups = {
  display: ["units", "mass", "weighing", "division", "capacity", "keys"],
  wanted: ["tolerance", "confidence"],
  drive: ["drive", "steps", "width", "wheel", "slip"],
  money: ["currency", "hour", "minutes", "setUp", "season", "fillArea"],
} as const satisfies Readonly<Record<string, readonly MachineField[]>>;

const ofGroundWheel: readonly MachineField[] = ["steps", "width", "wheel", "slip"];
const ofBin = ["target", "tooMuch", "tooLittle"] as const satisfies readonly BinField[];

/** Units, scale, tolerance, drive, prices, and the rate of each bin; what is not typed is named with its default. */
export function Settings({ session }: { readonly session: Session }) {
  const { page } = session.words.value;
  const say = page.settings;
  const typed = session.machine.value;
  const wheel = typed.drive?.text === "ground-wheel";
  return (
    <Panel heading={say.heading} back={page.back}>
      {Object.entries(groups).map(([group, fields]) => (
        <fieldset key={group}>
          <legend>{say[group as keyof typeof groups]}</legend>
          {fields
            .filter((field) => wheel || !ofGroundWheel.includes(field))
            .map((field) => (
              <Setting
                key={field}
                session={session}
                field={field}
                typed={typed[field]}
                put={(value) => session.act({ kind: "machine-typed", field, typed: value })}
              />
            ))}
        </fieldset>
      ))}
      {session.log.value.bins.map(({ bin, product, typed: ofThis }) => (
        <fieldset key={bin}>
          <legend>{`${bin}: ${product}`}</legend>
          {ofBin.map((field) => (
            <Setting
              key={field}
              session={session}
              field={field}
              typed={ofThis[field]}
              put={(value) => session.act({ kind: "bin-typed", bin, field, typed: value })}
            />
          ))}
        </fieldset>
      ))}
    </Panel>
  );
}

interface Props {
  readonly session: Session;
  readonly field: MachineField | BinField;
  readonly typed: Typed | undefined;
  readonly put: (typed: Typed | null) => void;
}

function Setting(props: Props) {
  const { field } = props;
  const rule = { ...machineFields, ...binFields }[field];
  return rule.is === "choice" ? <Choice {...props} values={rule.values} /> : <Figure {...props} />;
}

function Choice({
  session,
  field,
  typed,
  put,
  values,
}: Props & { readonly values: readonly string[] }) {
  const { settings: say } = session.words.value.page;
  const choices: Readonly<Record<string, Readonly<Record<string, string>>>> = say.choices;
  const names = choices[field] ?? {};
  const now = typed?.text ?? usualChoice(session, field);
  return (
    <div class="field">
      <p class="label" id={`of-${field}`}>
        {say.fields[field]}
      </p>
      <div class="choices" role="radiogroup" aria-labelledby={`of-${field}`}>
        {values.map((value) => (
          <label key={value} class={value === now ? "chosen" : ""}>
            <input
              type="radio"
              name={field}
              checked={value === now}
              onChange={() => put({ text: value, unit: null })}
            />
            <span>{names[value] ?? value}</span>
          </label>
        ))}
      </div>
    </div>
  );
}

function usualChoice(session: Session, field: string): string {
  switch (field) {
    case "units":
      return session.words.value.format.units;
    case "mass":
      return session.massUnit.value;
    case "weighing":
      return "net";
    case "drive":
      return session.given.setup === null ? "none" : "";
    default:
      return matchMedia("(pointer: coarse)").matches ? "big" : "device";
  }
}

function Figure({ session, field, typed, put }: Props) {
  const { page, format } = session.words.value;
  const say = page.settings;
  const refused = useSignal<string | null>(null);
  const unit = typed?.unit ?? unitOf(field, { units: format.units, mass: session.massUnit.value });
  return (
    <Field
      label={unit === null ? say.fields[field] : `${say.fields[field]} (${unit})`}
      value={refused.value ?? typed?.text ?? ""}
      decimal={decimal(field)}
      hint={typed === undefined ? usual(session, field) : undefined}
      error={refused.value === null ? null : `${say.wrong} ${neededIn(session, field)}.`}
      commit={(text) => {
        const allowed = text.trim() === "" || isAllowed(field, text);
        refused.value = allowed ? null : text;
        if (allowed) put(text.trim() === "" ? null : { text: text.trim(), unit });
      }}
    />
  );
}

function decimal(field: MachineField | BinField): boolean {
  return { ...machineFields, ...binFields }[field].is === "number";
}

function neededIn(session: Session, field: MachineField | BinField): string {
  const { needed } = session.words.value.page;
  const rule = { ...machineFields, ...binFields }[field];
  if (rule.is === "number") return needed.number(rule.low, rule.high);
  return rule.is === "numbers" ? needed.numbers : needed.text;
}

/** What counts while nothing is typed. */
function usual(session: Session, field: MachineField | BinField): string {
  const { page, format } = session.words.value;
  const setup = session.given.setup?.setup ?? null;
  const given: Readonly<Partial<Record<MachineField | BinField, unknown>>> = {
    tolerance: setup?.tolerance,
    confidence: setup?.confidence,
    division: setup?.scale.divisionKg,
    capacity: setup?.scale.capacityKg,
    width: setup?.cart.workingWidthM,
    wheel: setup?.cart.wheelCircumferenceM,
    slip: setup?.cart.slip,
    currency: setup?.money.currency,
    hour: setup?.money.valueOfHour,
    minutes: setup?.money.minutesPerCatch,
    setUp: setup?.money.minutesToSetUp,
    season: setup?.money.areaHectares,
    fillArea: setup?.money.areaPerFillHectares,
  };
  if (given[field] != null) return page.settings.fromSetup;
  switch (field) {
    case "tolerance":
      return page.assumed(format.plusMinus(defaults.tolerance));
    case "confidence":
      return page.assumed(format.percent(defaults.level, 0));
    case "division":
      return page.divisionRead;
    default:
      return page.settings.notGiven;
  }
}
