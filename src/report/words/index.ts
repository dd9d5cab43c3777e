/**
 * The one table of words for what is signed as a code: screen, papers, CSV and commands print what stands here. A sentence
 * may be changed at any time; no record and no verdict changes with it.
 */
export { ANSWER_GIVEN } from './answer.ts';
export * from './attested.ts';
export { amountSourceWords, CAUSE_WORDS, promiseWords } from './budget.ts';
export * from './check.ts';
export * from './feature.ts';
export * from './gap-step.ts';
export * from './link.ts';
export { notProvenByAny, notProvenByRecord } from './not-proven.ts';
export { noteLines } from './note.ts';
export * from './open-item.ts';
export * from './package.ts';
export * from './phone.ts';
export * from './placement.ts';
export * from './plug.ts';
export * from './question.ts';
export { reasonWords } from './reason.ts';
export { instrumentRefusalText } from './refusal.ts';
export * from './routine.ts';
export * from './source.ts';
export { statementWords } from './statement.ts';
export * from './step.ts';
export { ANGLE_FAULT_WORDS, degrees, turnLimitsText, turnText, turnVerdictText } from './turn.ts';
export * from './verified.ts';
