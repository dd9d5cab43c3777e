/** What many kinds of events have in common. */
import { z } from 'zod';
import { personal } from '../personal.ts';
import { figureSourceSchema } from '../reading.ts';
import { reasonCodeSchema } from './reason.ts';

export const toolId = z.string().min(1).max(32).describe('The tool, by its id in the station file.');
export const cylinder = z.int().min(1).describe('The cylinder; with two plugs a cylinder, the plug.');
export const source = figureSourceSchema.describe('Where the figure came from.');
export const us = z.int().nonnegative().describe('Monotonic clock of the session, in microseconds.');
export const person = personal('person', z.string().min(1).max(80).describe('Name of the person.'));
/** Why: a code of the list that was offered, else a person's own words. */
const picked = reasonCodeSchema.describe('A reason of the list that the screen offers.');
export const ownWords = (text: z.ZodString) => personal('note', text.describe("In the person's own words."));
export const reason = z.union([picked, ownWords(z.string().min(1).max(200))]).describe('Why.');
export const why = z.union([picked, ownWords(z.string().max(200))]).describe('Why.');

export const base64 = z.string().regex(/^[A-Za-z0-9+/]*={0,2}$/, 'expected base64');
