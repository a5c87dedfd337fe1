import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { utils, write } from "@e965/xlsx";
import { describe, expect, it } from "vitest";
import { provenanceOf } from "../../src/cli/provenance.ts";
import { readCatches } from "../../src/data/read-catches.ts";
import { catchSource } from "../../src/node.ts";
import { fileWith, inFolder } from "../support/command.ts";

const nothing = { sheet: undefined, setup: null, library: null };

// FIPS 180-2, appendix B.1: the digest of "abc".
const ofAbc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

describe("the files of a report", () => {
  it("are told by name and by the SHA-256 that other programs give", async () => {
    await inFolder(async (folder) => {
      const catches = await fileWith(folder, "catches.csv", "abc");
      expect(
        await provenanceOf({
          ...nothing,
          catches: [await catchSource(catches), { name: "typed.csv", text: "abc" }],
          setup: await catchSource(catches),
        }),
      ).toEqual({
        catches: [
          { name: "catches.csv", sheet: null, sha256: ofAbc },
          { name: "typed.csv", sheet: null, sha256: ofAbc },
        ],
        setup: expect.objectContaining({ name: "catches.csv" }),
        library: null,
      });
    });
  });

  it("are told as they were read, whatever has become of them since", async () => {
    await inFolder(async (folder) => {
      const source = await catchSource(await fileWith(folder, "setup.json", "abc"));
      await fileWith(folder, "setup.json", "other");
      const { setup, library } = await provenanceOf({
        ...nothing,
        catches: [],
        setup: source,
        library: source,
      });
      expect([setup?.sha256, library?.sha256]).toEqual([ofAbc, ofAbc]);
    });
  });

  it("are told with the sheet that was read of a workbook: the one asked for, or the first", async () => {
    await inFolder(async (folder) => {
      const book = utils.book_new();
      for (const name of ["spring", "autumn"])
        utils.book_append_sheet(book, utils.aoa_to_sheet([["bin"]]), name);
      const path = join(folder, "catches.xlsx");
      await writeFile(path, write(book, { type: "buffer", bookType: "xlsx" }));
      const sheetOf = async (sheet: string | undefined) =>
        (await provenanceOf({ ...nothing, catches: [await catchSource(path)], sheet })).catches[0]
          ?.sheet;
      expect(await sheetOf(undefined)).toBe("spring");
      expect(await sheetOf("autumn")).toBe("autumn");
    });
  });

  it("are not unpacked again to name the first sheet of a workbook that was read", async () => {
    const book = utils.book_new();
    const rows = [
      ["bin", "product", "fill", "catch", "turns", "net_kg"],
      ["1", "wheat", 1, 1, 20, 6],
    ];
    utils.book_append_sheet(book, utils.aoa_to_sheet(rows), "spring");
    const bytes = new Uint8Array(write(book, { type: "array", bookType: "xlsx" }));
    const source = { name: "catches.xlsx", bytes };
    await readCatches(source);
    // What is left cannot be unpacked, and still begins as an archive does.
    bytes.fill(0, 8);
    const [told] = (await provenanceOf({ ...nothing, catches: [source] })).catches;
    expect(told?.sheet).toBe("spring");
  });
});
