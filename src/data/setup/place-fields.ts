import { optionalKey } from "./field.ts";
import { text } from "./values.ts";

/** @internal */
export const machine = optionalKey(
  "machine",
  text,
  "Machine, when the entry is for this one only; every machine's bin of that name where left out",
  "north",
);

/** @internal */
export const farm = optionalKey(
  "farm",
  text,
  "Farm, when the entry is for this one only; every farm's where left out",
  "Hill Farm",
);

/** @internal */
export const season = optionalKey(
  "season",
  text,
  "Season of that fill, needed where the catches hold several",
  "2026",
);
