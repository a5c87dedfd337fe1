import type { Format } from "../format.ts";

export function catchWords(catches: number): string {
  return catches === 1 ? "1 catch" : `${catches} catches`;
}

export function fillWords(fills: number): string {
  return fills === 1 ? "1 fill" : `${fills} fills`;
}

/** "1 degree of freedom", "7.3 degrees of freedom". */
export function degrees(df: number, format: Format): string {
  return `${format.plain(df)} ${df === 1 ? "degree" : "degrees"} of freedom`;
}
