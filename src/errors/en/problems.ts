import type { ProblemTemplates } from "../issue-text.ts";
import { issueFrame } from "./issue-frame.ts";
import { fileProblems } from "./problems-file.ts";
import { importProblems } from "./problems-import.ts";
import { optionProblems } from "./problems-option.ts";
import { poolProblems } from "./problems-pool.ts";
import { programProblems } from "./problems-program.ts";
import { setupProblems } from "./problems-setup.ts";
import { tableProblems } from "./problems-table.ts";

/** What is said of problems: here and not with the other words, since an error must be able to say what it is about. */
export const problems: ProblemTemplates = {
  ...issueFrame,
  problems: {
    ...fileProblems,
    ...tableProblems,
    ...importProblems,
    ...poolProblems,
    ...programProblems,
    ...setupProblems,
  },
  options: optionProblems,
};
