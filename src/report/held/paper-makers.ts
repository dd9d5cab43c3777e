/** The papers of a package that are not those of its jobs. Whoever draws brings them: the page does not carry what it never draws. */
import { disputePaper } from '../dispute.ts';
import { impactPaper } from '../impact-paper.ts';

export const PAPER_MAKERS = { impact: impactPaper, dispute: disputePaper };
export type PaperMakers = typeof PAPER_MAKERS;
