/** k in U = k·u: every expanded uncertainty of a window or a judgement is stated with it. */
export const COVERAGE_FACTOR = 2;
