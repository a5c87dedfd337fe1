import type { setting as english, ranged as englishRanged } from "../en/setting.ts";

/** A figure with its interval. */
export const ranged: typeof englishRanged = (f) =>
  f.range === null ? f.value : `${f.value} (Vertrauensbereich, ${f.level}: ${f.range})`;

/** What is said of what to set the drive to. */
export const setting: typeof english = {
  orMore: "oder mehr",
  turns: (f) => `${f.turns} U/${f.area}`,
  atSpeed: (f) => `${f.turnsPerMin} U/min bei ${f.speed} ${f.unit}`,
  noTarget: (f) =>
    `Tank ${f.bin} (${f.product}), Füllung ${f.fill}: Was einzustellen ist, lässt sich ohne Sollmenge nicht sagen.`,
  needsRatio: (f) =>
    `Tank ${f.bin} (${f.product}), Füllung ${f.fill}: ${f.target} brauchen eine Übersetzung von ${ranged(f)}.`,
  needsTurns: (f) =>
    `Tank ${f.bin} (${f.product}), Füllung ${f.fill}: ${f.target} brauchen ${ranged(f)}${f.atSpeeds === null ? "" : `, also ${f.atSpeeds}`}.`,
  nearestStep: (f) =>
    `Die nächstgelegene Stufe, ${f.step}, bringt ${f.assumed ? "angenommen " : ""}${f.rate} aus${f.error === null ? "" : `, ${f.error}`}.`,
  missing: {
    "target rate": "die Sollmenge",
    "thousand-kernel mass": "die Tausendkornmasse",
    germination: "die Keimfähigkeit",
    emergence: "der Feldaufgang",
    "working width": "die Arbeitsbreite",
    drive: "was den Dosierer dreht",
    "wheel travel": "der Weg des Antriebsrads je Umdrehung",
    "working speed": "die Arbeitsgeschwindigkeit",
    "meter speeds": "die Drehzahlen, die der Antrieb halten kann",
  },
};
