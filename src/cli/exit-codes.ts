/** What the command says to the shell when it ends. Documented in README. */
export const exitCodes = {
  fine: 0,
  /** Only when --fail-on asks for it: the answer carries cautions of that severity or graver. */
  cautions: 1,
  badInput: 2,
  internal: 3,
} as const;

export type ExitCode = (typeof exitCodes)[keyof typeof exitCodes];
