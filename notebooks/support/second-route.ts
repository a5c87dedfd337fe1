/// <reference path="../../test/support/jstat.d.ts" />
import jstat from "jstat";

/** Quantiles by jstat, a package written by others, which nothing in evencatch's answers goes through. */
export const { studentt, normal } = jstat.jStat;
