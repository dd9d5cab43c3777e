/** The words for every signed code: screen, papers, CSV and verification print them from here. */
export * from './source.ts';
