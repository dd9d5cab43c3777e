import { problemOf, type Refusal } from '../../instrument/unfit.ts';

/** Why an instrument would have been refused: the message of the problem that stops a job where nobody answers for it. */
export const instrumentRefusalText = (refusal: Refusal): string => problemOf(refusal).message;
