/** The one table of words: every code that is signed or compared becomes a sentence here, where it is printed. */
export { amountSourceWords, CAUSE_WORDS, promiseWords } from './budget.ts';
export { noteLines, noteWords } from './note.ts';
export { refusalWords } from './refusal.ts';
