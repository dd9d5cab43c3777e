/** While somebody types what looks like a telephone number. */
import { w } from '../../words/catalogue.ts';

export const phoneNote = (): string =>
  w`This looks like a telephone number. Papers and shared records leave it out; the log contains it.`;
