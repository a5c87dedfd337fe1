import type { IntervalMethod } from "../../model/worked-out.ts";
import type { DriveSetting, MissingForSetting } from "../../questions/setting.ts";
import type { SettingWords } from "../english/setting.ts";
import type { Format } from "../format.ts";
import { settingFigures } from "../setting-figures.ts";

/** Everything said about what to set the drive to, in German. */
export function germanSetting(format: Format): SettingWords {
  const { figure, turns, speed, speedUnit, rate, span, stepName } = settingFigures(
    format,
    "oder mehr",
  );
  const level = ({ options }: DriveSetting) => format.percent(options.level, 0);
  const perArea = `U/${format.unit("area", 1)}`;
  const setTo = (result: DriveSetting): string | null => {
    const { ratio, turnsPerHectare, meterSpeeds } = result;
    if (ratio !== null)
      return withSpan(`eine Übersetzung von ${figure(ratio.value)}`, span(ratio, figure), result);
    if (turnsPerHectare === null) return null;
    const atSpeeds = meterSpeeds.map(
      ({ speedKmPerH, turnsPerMin }) =>
        `${format.plain(turnsPerMin.value)} U/min bei ${speed(speedKmPerH)} ${speedUnit}`,
    );
    const needed = `${turns(turnsPerHectare.value)} ${perArea}`;
    const spanned = withSpan(needed, span(turnsPerHectare, turns), result);
    return atSpeeds.length === 0 ? spanned : `${spanned}, also ${format.list(atSpeeds)}`;
  };
  const withSpan = (what: string, range: string | null, result: DriveSetting) =>
    range === null ? what : `${what} (Vertrauensbereich, ${level(result)}: ${range})`;

  return {
    heading: "Was einzustellen ist",
    turns,
    speed,
    stepName,
    rateAt: rate,
    sentence: (result) => {
      const who = `Tank ${result.bin} (${result.product}), Füllung ${result.fill}`;
      const needed = setTo(result);
      if (result.target === null || needed === null)
        return `${who}: Was einzustellen ist, lässt sich ohne Sollmenge nicht sagen.`;
      const best = result.nearest === null ? null : (result.steps[result.nearest.nearest] ?? null);
      const step =
        best === null
          ? ""
          : ` Die nächstgelegene Stufe, ${stepName(best)}, bringt ${rate(best.rate)} aus${best.rateError === null ? "" : `, ${format.signedPercent(best.rateError.value)}`}.`;
      return `${who}: ${rate(result.target)} brauchen ${needed}.${step}`;
    },
    target: ({ target, options }) => {
      if (target === null || options.target === null || options.target.kind === "mass") return null;
      const wanted =
        options.target.kind === "seeds"
          ? `${format.plain(options.target.seedsPerM2)} Körner/m²`
          : `${format.plain(options.target.plantsPerM2)} Pflanzen/m²`;
      const range = format.estimateInterval(target, "rate");
      return `${wanted} sind ${rate(target)} von diesem Saatgut${range === null ? "" : ` (${range})`}.`;
    },
    turnsNeeded: (result) => {
      const { turnsPerHectare, ratio } = result;
      if (turnsPerHectare === null || ratio === null) return null;
      const range = span(turnsPerHectare, turns);
      return `Nötige Umdrehungen des Dosierers: ${withSpan(`${turns(turnsPerHectare.value)} ${perArea}`, range, result)}.`;
    },
    meterSpeed: ({ meterSpeeds, ratio, caughtTurnsPerMin: caught }) => {
      const needed = meterSpeeds.map(({ turnsPerMin }) => turnsPerMin.value);
      if (needed.length === 0 || caught === null) return null;
      const range = (from: number, to: number) =>
        from === to ? format.plain(from) : format.range(format.plain(from), format.plain(to));
      const turning = range(Math.min(...needed), Math.max(...needed));
      return `${ratio === null ? "Bei diesen Einstellungen" : "Bei den Arbeitsgeschwindigkeiten"} dreht der Dosierer mit ${turning} U/min; die Proben wurden mit ${range(caught.from, caught.to)} gedreht.`;
    },
    reach: ({ reach, target, options }) => {
      if (reach === null) return null;
      const { rates, speedsKmPerH } = reach;
      const speeds = options.speedKmPerH;
      const at =
        options.drive?.kind === "motor" && speeds !== null
          ? `Bei jeder Geschwindigkeit von ${format.range(speed(speeds.from), speed(speeds.to))} ${speedUnit} kann der Antrieb`
          : "Der Antrieb kann";
      const byRate =
        rates === null || rates.empty
          ? null
          : `${at} ${format.range(format.value(rates.lower, "rate"), format.value(rates.upper, "rate"))} ausbringen.`;
      const bySpeed =
        speedsKmPerH === null || target === null
          ? null
          : `${rate(target)} lassen sich von ${format.range(speed(speedsKmPerH.lower), speed(speedsKmPerH.upper))} ${speedUnit} halten.`;
      return [byRate, bySpeed].filter((part) => part !== null).join(" ") || null;
    },
    now: ({ now }) => {
      if (now === null) return null;
      const range = format.estimateInterval(now.rate, "rate");
      const error =
        now.rateError === null
          ? ""
          : `, ${format.signedPercent(now.rateError.value)} gegenüber der Sollmenge`;
      return `So wie der Antrieb jetzt steht (${turns(now.turnsPerHectare.value)} ${perArea}, nach ${givenWords[now.from]}), bringt er ${rate(now.rate)} aus${range === null ? "" : ` (${range})`}${error}.`;
    },
    method: ({ ratio, turnsPerHectare, steps }) => {
      const needed = ratio ?? turnsPerHectare;
      if (needed === null) return null;
      const ofRates = steps[0]?.rate.method;
      return `Vertrauensbereich der Einstellung: ${methodWords[needed.method]}.${ofRates === undefined ? "" : ` Vertrauensbereiche der Mengen: ${methodWords[ofRates]}.`} Mengenfehler gelten gegen die Sollmenge als feste Zahl.`;
    },
    detail: "Mengen der Einstellungen darüber und darunter",
    table: {
      stepsCaption: "Was jede Stufe ausbringt",
      aroundCaption: "Die nötige Einstellung und etwas darüber und darunter",
      step: "Stufe",
      nearest: (step) => `${step} (am nächsten)`,
      ratio: "Übersetzung",
      turns: `Umdrehungen (${perArea})`,
      rate: (unit) => `Menge (${unit})`,
      interval: "Vertrauensbereich",
      error: "Gegen die Sollmenge",
      unknown: "nicht bekannt",
    },
    chart: {
      title: (result) => `Was jede Stufe ausbringt, Tank ${result.bin}`,
      description: ({ steps, target, options }) =>
        `Mengenfehler von ${steps.length} Stufen des Antriebs gegen die Sollmenge${target === null ? "" : ` von ${rate(target)}`}, mit der Toleranz von ${format.plusMinus(options.tolerance)}. ${steps
          .map((step) => `${stepName(step)}: ${format.signedPercent(step.rateError?.value ?? 0)}`)
          .join("; ")}.`,
      setting: "Übersetzung",
      needed: (ratio) => `nötig: ${figure(ratio)}`,
      error: "Gegen die Sollmenge (%)",
      tolerance: (tolerance) => `Toleranz ${format.plusMinus(tolerance)}`,
    },
  };
}

/** Figures a setting needs, as a person names them. */
export const missingForSettingWords: Readonly<Record<string, string>> = {
  "target rate": "die Sollmenge",
  "thousand-kernel mass": "die Tausendkornmasse",
  germination: "die Keimfähigkeit",
  emergence: "der Feldaufgang",
  "working width": "die Arbeitsbreite",
  drive: "was den Dosierer dreht",
  "wheel travel": "der Weg des Antriebsrads je Umdrehung",
  "working speed": "die Arbeitsgeschwindigkeit",
  "meter speeds": "die Drehzahlen, die der Antrieb halten kann",
} satisfies Record<MissingForSetting, string>;

const givenWords: Readonly<Record<NonNullable<DriveSetting["now"]>["from"], string>> = {
  "turns per hectare": "den angegebenen Umdrehungen je Hektar",
  "drive ratio": "der angegebenen Übersetzung",
};

const methodWords: Readonly<Record<IntervalMethod, string>> = {
  exact: "keiner, jeder Teil ist exakt",
  "t interval": "der des Austrags (t-Verteilung), umgerechnet",
  "reciprocal of the t interval": "der des Austrags (t-Verteilung), als Kehrwert",
  Fieller: "nach Fieller, für das Verhältnis zweier unsicherer Größen",
  "GUM propagation":
    "Fortpflanzung der Unsicherheit (GUM), t-Verteilung mit Freiheitsgraden nach Welch-Satterthwaite",
  none: "keiner, weil der Austrag keinen hat",
};
