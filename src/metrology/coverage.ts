/** k in U = k·u where the degrees of freedom are without number. */
export const COVERAGE_FACTOR = 2;

/** What U covers: the share of the normal distribution within 2u, 95 % as laboratories state it (EA-4/02, GUM 6.3.3). */
export const COVERAGE = 0.9544997361036416;
