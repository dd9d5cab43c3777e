/** Fitted by `npm run bench -- fit-kinds scenes=500`: see shape.ts. Not to be edited by hand. */

/* Scenes 0 to 499 of tests/bench/kinds/scenes.ts, each on 'M14 new gasket', 'M14 used gasket', 'M14 conical', 'M10 new gasket', 'M10 used gasket', 'M18 conical', 'M18 new gasket'; pulls: KNOCK 6548. */

/** Log odds of a knock against a low stroke; terms of `knockTerms`. */
export const KNOCK: readonly number[] = [65.6148, -10.4611, -0.6906, -1.0551, -3.5221, -44.8052, -23.2235];
