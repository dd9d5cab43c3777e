/** What stands on a paper for a character that its own fonts do not have, and what says that fonts of the machine drew it. */

/** In the place of a character that no font has. Every paper's own fonts have it. */
export const LACKING = '□';

/** At the end of the name of what drew a paper: its bytes depend on the fonts of one machine. */
export const WITH_MACHINE_FONTS = ', with fonts of the machine';
