/**
 * The record for people: from a job's state and entries to pages that a customer can read and a table that a
 * spreadsheet can open. The signed record stays the evidence; nothing here decides anything.
 */
export { writeCsv } from './csv.ts';
export { writePdf } from './pdf.ts';
