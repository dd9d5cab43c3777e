import type { StudyMeasures } from '../evidence/gauge-study-event.ts';

/** Between which figures a reading is believed without a question. */
export interface Believable {
  readonly lower: number;
  readonly upper: number;
  readonly unit: StudyMeasures['unit'];
}

/** From here on a figure is taken for a slip, of a hand or of a gauge. Our own choice, as for figures of torque. */
const FAR_OFF = 2;
/** The smallest and the widest gap that a spark plug is made with: aircraft and car engines, as published. */
const GAPS_MM = [0.4, 1.5] as const;

/** What is no slip: half the smallest to twice the widest gap of any plug, half to twice the torque that pulls come to. */
export function believableOf(measures: StudyMeasures): Believable {
  const [least, most] = measures.quantity === 'length' ? GAPS_MM : [measures.aboutNm, measures.aboutNm];
  return { lower: least / FAR_OFF, upper: most * FAR_OFF, unit: measures.unit };
}

export const isBelievable = (value: number, { lower, upper }: Believable) => value >= lower && value <= upper;
