/** How a person pulls. Angles in degrees of the handle; shares are of the torque that the wrench is set to. */
export interface PullStyle {
  /** Speed of the hand against little resistance. */
  readonly speedDegPerS: number;
  /** From this share on the hand slows down and feels for the click; null: it does not. */
  readonly easeFromShare: number | null;
  /** From the click to the hand's beginning to stop. */
  readonly reactionMs: number;
  /** What the arm still pushes after the click, as a share of the setting: the re-rise cannot pass it. */
  readonly effortAfterShare: number;
  /** Way of the hand after the reaction, before it stops. */
  readonly followThroughDeg: number;
  /** Stops by feel at this share of the click; null: goes on to the click. */
  readonly stopAtShare: number | null;
  /** Leans on after the click until the torque is this share of the setting; null: does not. */
  readonly leanToShare: number | null;
  readonly holdMs: number;
  readonly letOffDegPerS: number;
  /** Room for the handle, or the wish of the hand: the pull is made in as many strokes of this as it takes. */
  readonly strokeDeg: number;
}
