import type { HistoryStatus } from "../../model/history.ts";

/** What to do next; the first comes first. */
export type DriftStep =
  | "collect fills"
  | "carry on"
  | "catch again"
  | "catch every fill"
  | "set by this fill"
  | "look for the cause";

/**
 * A single odd fill is checked by catching again before anything is turned. A level that changed needs another setting,
 * and has a cause worth looking for; while each fill delivers more, or less, than the last, no setting lasts.
 */
export function nextSteps(status: HistoryStatus): readonly DriftStep[] {
  switch (status) {
    case "too few fills":
      return ["collect fills"];
    case "not asked":
    case "steady":
    case "stood apart":
      return ["carry on"];
    case "fill differs":
      return ["catch again"];
    case "fill differs, confirmed":
    case "moved":
      return ["set by this fill", "look for the cause"];
    case "trending":
      return ["catch every fill", "look for the cause"];
  }
}
