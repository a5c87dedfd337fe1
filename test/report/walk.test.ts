import { describe, expect, test } from "vitest";
import { OptionError } from "../../src/errors/errors.ts";
import type { Block } from "../../src/report/document.ts";
import { chartsIn, checkIds, walkBlocks } from "../../src/report/walk.ts";

const chart = (id: string): Block => ({
  kind: "chart",
  id,
  title: id,
  description: id,
  spec: {},
});
const section = (id: string, ...blocks: Block[]): Block => ({
  kind: "section",
  id,
  heading: id,
  blocks,
});
const details = (...blocks: Block[]): Block => ({ kind: "details", summary: "", blocks });

const tree = [section("a", chart("b"), section("c", details(chart("d")))), chart("e")];

describe("walkBlocks", () => {
  test("visits parents before children, in reading order, and looks into folded details", () => {
    const kinds = [...walkBlocks(tree)].map((block) => ("id" in block ? block.id : block.kind));
    expect(kinds).toEqual(["a", "b", "c", "details", "d", "e"]);
    expect(chartsIn(tree).map(({ id }) => id)).toEqual(["b", "d", "e"]);
  });
});

describe("checkIds", () => {
  test("finds a repeated id at any depth", () => {
    expect(() => checkIds(tree)).not.toThrow();
    expect(() => checkIds([...tree, details(chart("d"))])).toThrow(OptionError);
  });
});
