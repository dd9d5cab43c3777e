import type { TorqueAttempt } from './state.ts';

/** Which step of its tightening a plug is at; a plain tightening is at its last one from the beginning. */
export type Stage = 'first' | 'loosen' | 'final';

/** `loosen` stands between the first torque, once it is proven, and the last one. */
export function stageAfter(stage: Stage, { kind, judgement, answer }: TorqueAttempt): Stage {
  if (answer === 'refit' || answer === 'replace') return 'first';
  if (kind === 'loosening') return stage === 'loosen' ? 'final' : stage;
  const tightened = kind === 'tightening' || kind === 'continuation';
  return stage === 'first' && tightened && judgement?.result === 'OK' ? 'loosen' : stage;
}
