import type { AddedRow } from "../../data/append/append-catches.ts";
import type { Facts } from "./facts.ts";

/** As they stand in the file, with its unit; null: nothing was weighed. */
export interface AddedFigures {
  readonly caught: (Facts<"turns" | "net"> & { readonly tare: string | null }) | null;
}

const toGoOn = {
  elsewhere: "To go on, give another folder.",
  remove: "To go on, remove them, or give another folder.",
  replace: "To go on, give another folder, or --replace to write over them.",
};

/** What the command says beside its answers: where they went, and what is in the way of writing them. */
export const command = {
  report: (file: string) => `Report: ${file}`,
  sheet: (file: string) =>
    `Sheet: ${file}, with a setup.json beside it that makes its report one of a trial: evencatch report ${file}`,
  setupFound: (file: string) =>
    `Setup: ${file}, found beside the catches (--no-setup leaves it out)`,
  libraryWaits:
    "The library lends from the first catch on; a plan before it rests on the assumed scatter.",
  /** Catches that were typed, as they were understood. */
  readAs: (caught: readonly Facts<"turns" | "mass">[]) =>
    `Read as: ${caught.map(({ turns, mass }) => `${turns} turns ${mass}`).join(", ")}.`,
  added: ({ where, spilled, caught }: Pick<AddedRow, "where" | "spilled"> & AddedFigures) => {
    const said =
      where === null
        ? "Added a catch"
        : `Added: bin ${where.bin} (${where.product}), fill ${where.fill}, catch ${where.catch}`;
    if (caught === null) return `${said}, left out without a mass (${spilled}).`;
    const { turns, net, tare } = caught;
    return `${said}: ${turns} ${turns === "1" ? "turn" : "turns"}, ${net} net${tare === null ? "" : `, tare ${tare}`}.`;
  },
  locked: (f: Facts<"file" | "lock">) =>
    `${f.file}: nothing was added, since another command has been at it for ten seconds. If none is running, delete ${f.lock} and try again.`,
  cannotAdd: (f: Facts<"file" | "why">) => `${f.file}: nothing was added (${f.why}).`,
  tooFewProducts: (only: string | null) =>
    `A trial needs two or more products to compare, such as: evencatch plan wheat barley. Found ${only === null ? "none" : `only "${only}"`}.`,
  kept: (f: Facts<"folder" | "names">) =>
    `${f.folder}: kept ${f.names}, which this run does not write and somebody changed.`,
  nothingWritten: (folder: string) => `${folder}: nothing was written.`,
  cannotWrite: (f: Facts<"folder" | "why">) =>
    `${f.folder}: it must be a folder that can be written to (${f.why}).`,
  notAllPlaced: (f: Facts<"folder" | "why">) =>
    `${f.folder}: every file was written, but not all could be put in their places (${f.why}). The next run into this folder does it.`,
  beingWritten: (f: Facts<"folder" | "file">) =>
    `${f.folder}: another run is writing into this folder. Wait until it is done; if there is none, delete ${f.file} in it.`,
  /** By what is wrong with the names. */
  inTheWay: {
    input: ({ names }: Facts<"names">) =>
      `Read by this command and never written over: ${names}. ${toGoOn.elsewhere}`,
    link: ({ names }: Facts<"names">) => `Links to somewhere else: ${names}. ${toGoOn.remove}`,
    "no file": ({ names }: Facts<"names">) =>
      `In the way, and no files: ${names}. ${toGoOn.remove}`,
    "no folder": ({ names }: Facts<"names">) =>
      `In the way, and no folders: ${names}. ${toGoOn.remove}`,
    changed: ({ names }: Facts<"names">) =>
      `Changed since evencatch wrote them: ${names}. ${toGoOn.replace}`,
    "not covered": (f: Facts<"names" | "manifest">) =>
      `Not in a manifest of evencatch's, so perhaps yours (or from a version without ${f.manifest}): ${f.names}. ${toGoOn.replace}`,
  },
  andMore: (f: Facts<"names"> & { readonly more: number }) => `${f.names} and ${f.more} more`,
  ownFault: "Something went wrong inside evencatch; this is a fault of the program.",
};
