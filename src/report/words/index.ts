/**
 * The one table of words for what is signed as a code: screen, papers, CSV and commands print what stands here. A sentence
 * may be changed at any time; no record and no verdict changes with it.
 */
export * from './attested.ts';
export { amountSourceWords, CAUSE_WORDS, promiseWords } from './budget.ts';
export * from './check.ts';
export * from './feature.ts';
export * from './gap-step.ts';
export * from './link.ts';
export { NOT_PROVEN_BY_ANY, notProvenByRecord } from './not-proven.ts';
export { noteLines } from './note.ts';
export * from './open-item.ts';
export * from './package.ts';
export * from './placement.ts';
export * from './plug.ts';
export * from './question.ts';
export { instrumentRefusalText } from './refusal.ts';
export * from './routine.ts';
export { saidWords } from './said.ts';
export * from './source.ts';
export * from './step.ts';
export { ANGLE_FAULT_WORDS, turnText, turnVerdictText } from './turn.ts';
