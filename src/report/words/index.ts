/** The one table of words: every code that is signed or compared becomes a sentence here, where it is printed. */
export { amountSourceWords, CAUSE_WORDS, promiseWords } from './budget.ts';
export { NOT_PROVEN_BY_ANY, notProvenByRecord } from './not-proven.ts';
export { noteLines, noteWords } from './note.ts';
export { refusalWords } from './refusal.ts';
