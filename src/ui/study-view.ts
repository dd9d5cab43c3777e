/** All that the screen of a gauge study shows. No reading is in it but the one that may be seen. */
import type { ToolState } from '../job/state.ts';
import type { Quantity } from '../reading.ts';
import type { Calibrations } from './foot.ts';

export interface StudyView {
  readonly study: string;
  readonly station: string;
  readonly quantity: Quantity;
  /** The tool types its figures, or somebody does for it. */
  readonly types: boolean;
  readonly tool: ToolState;
  readonly calibrations: Calibrations;
  readonly appraisers: readonly string[];
  readonly parts: readonly string[];
  readonly trials: number;
  readonly steps: number;
  /** How many trials are measured, by appraiser and part. */
  readonly measured: readonly (readonly number[])[];
  /** Places in the lists above; the trial counts from 1. Null once all is measured. */
  readonly due: { readonly appraiser: number; readonly part: number; readonly trial: number } | null;
  /** What was done last in this sitting; `value` only where it may be seen by whoever measures next. */
  readonly last: {
    readonly done: 'taken' | 'back';
    readonly appraiser: number;
    readonly part: number;
    readonly value: number | null;
  } | null;
  /** Another appraiser than the last one. */
  readonly handOver: boolean;
  readonly paused: boolean;
  readonly notice: { readonly words: string } | null;
  /** The reading that came for the part that is due, far from what is believed; the same object until it is answered. */
  readonly asked: { readonly value: number; readonly lower: number; readonly upper: number } | null;
  readonly live: { readonly nowNm: number; readonly pulling: boolean } | null;
  readonly result: StudyResult | null;
}

/** What both methods come to, side by side. */
export interface StudyResult {
  readonly unit: 'mm' | 'N.m';
  readonly methods: readonly StudyMethod[];
  /** What else is to be known of the readings. */
  readonly notes: readonly string[];
}

export interface StudyMethod {
  readonly title: string;
  /** Null where the method cannot say anything; then `why`. */
  readonly values: {
    /** In the order in which both methods have them; a text is empty where the method has no such term. */
    readonly variations: readonly {
      readonly name: string;
      readonly sigma: string;
      readonly percent: string;
    }[];
    readonly categories: string;
    readonly grade: 'good' | 'weak' | 'not-fit';
  } | null;
  readonly why: string;
}

/** How many readings stand. */
export const takenOf = ({ measured }: StudyView): number =>
  measured.flat().reduce((sum, one) => sum + one, 0);

/** What its figures are in. */
export const unitOf = ({ quantity }: Pick<StudyView, 'quantity'>): StudyResult['unit'] =>
  quantity === 'length' ? 'mm' : 'N.m';
