import { type FileProblems, fileCodes } from "./problems/file.ts";
import { type ImportProblems, importCodes } from "./problems/import.ts";
import { type PoolProblems, poolCodes } from "./problems/pool.ts";
import { type ProgramProblems, programCodes } from "./problems/program.ts";
import { type SetupProblems, setupCode, type spreadsCode } from "./problems/setup.ts";
import { type TableProblems, tableCodes } from "./problems/table.ts";

/**
 * Everything that can be wrong with a file, each with the facts its sentences are made from. Facts are JSON-safe, and a
 * text of the file is in them as the file has it.
 */
export interface ProblemFacts
  extends FileProblems,
    TableProblems,
    ImportProblems,
    PoolProblems,
    ProgramProblems,
    SetupProblems {}

export type ProblemKey = keyof ProblemFacts;

export interface ProblemOf<K extends ProblemKey> {
  readonly problem: K;
  readonly facts: ProblemFacts[K];
}

export type Problem = { readonly [K in ProblemKey]: ProblemOf<K> }[ProblemKey];

const coded = { ...fileCodes, ...tableCodes, ...importCodes, ...poolCodes, ...programCodes };

/** Kinds of problem for programs; one may be raised for several reasons, which have words of their own. */
export type DataIssueCode =
  | (typeof coded)[keyof typeof coded]
  | typeof setupCode
  | typeof spreadsCode;

const codes: { readonly [K in ProblemKey]?: DataIssueCode } = coded;

export function codeOf(problem: ProblemKey): DataIssueCode {
  return codes[problem] ?? setupCode;
}
