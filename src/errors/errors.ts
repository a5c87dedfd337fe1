import type { DataIssue } from "./data-issue.ts";
import { optionProblems } from "./en/problems-option.ts";
import { neededText, receivedText } from "./option-text.ts";
import type { OptionNeed } from "./problems/option.ts";

/** Base of every error evencatch throws on purpose. `code` is stable; the message is for a person. */
export abstract class EvencatchError extends Error {
  abstract readonly code: string;
}

/** The input cannot be used. Carries every problem found, not only the first. */
export class DataError extends EvencatchError {
  override readonly name = "DataError";
  readonly code = "bad-data";
  readonly source: string;
  readonly issues: readonly DataIssue[];

  /** @param message  all of them, for a person; made apart, so that nobody carries sentences he never says */
  constructor(source: string, issues: readonly DataIssue[], message: string) {
    super(message);
    this.source = source;
    this.issues = issues;
  }
}

/**
 * An option has a value it cannot have, or a name nobody knows. What it may be is said in English; `need` says it for other
 * languages, null where it is not among the needs that recur.
 */
export class OptionError extends EvencatchError {
  override readonly name = "OptionError";
  readonly code = "bad-option";
  readonly option: string;
  readonly received: unknown;
  readonly allowed: string;
  readonly need: OptionNeed | null;

  constructor(option: string, received: unknown, needed: string | OptionNeed) {
    const allowed = typeof needed === "string" ? needed : neededText(needed, optionProblems);
    super(optionProblems.text({ option, received: receivedText(received), allowed }));
    this.option = option;
    this.received = received;
    this.allowed = allowed;
    this.need = typeof needed === "string" ? null : needed;
  }
}

/** A unit that is unknown, or that cannot be converted into the one asked for. */
export class UnitError extends EvencatchError {
  override readonly name = "UnitError";
  readonly code = "bad-unit";
}

/** A numerical routine was given arguments outside its domain, or did not converge. */
export class NumericalError extends EvencatchError {
  override readonly name = "NumericalError";
  readonly code = "numerical";
}

/** An optional package is needed that is not installed. */
export class PackageError extends EvencatchError {
  override readonly name = "PackageError";
  readonly code = "package-missing";
  readonly package: string;
  /** The line that installs it. */
  readonly install: string;

  constructor(name: string, install: string, cause: unknown) {
    super(`The optional package ${name} is needed here and cannot be loaded: ${install}`, {
      cause,
    });
    this.package = name;
    this.install = install;
  }
}

/** A chart could not be drawn: its specification is not one, or asks for something outside itself. */
export class DrawingError extends EvencatchError {
  override readonly name = "DrawingError";
  readonly code = "drawing";
  readonly chart: string;

  constructor(chart: string, cause: unknown) {
    super(`Chart "${chart}" could not be drawn: ${messageOf(cause)}`, { cause });
    this.chart = chart;
  }
}

function messageOf(cause: unknown): string {
  return cause instanceof Error ? cause.message : String(cause);
}
