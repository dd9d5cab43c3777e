import type { InstrumentInUse } from '../instrument/instrument.ts';
import type { Judgement, Window } from '../metrology/judgement.ts';
import type { GapStep } from '../plug/gap.ts';
import type { Pull } from '../pull/pull.ts';
import type { FigureSource, LinkEnd, Quantity, ToolDescription, ToolId } from '../reading.ts';
import type { Evidence } from '../sequence/evidence.ts';
import type { Ask, PullKind } from '../sequence/kind.ts';
import type { PlacementReason } from '../sequence/reason.ts';
import type { Basis } from './basis.ts';
import type { Answer, JobEventOf, ScrapReason } from './event.ts';
import type { OpenItem } from './open-item.ts';
import type { WorkOrder } from './order.ts';
import type { Step } from './order-of-work.ts';
import type { OutOfOrder } from './out-of-order.ts';
import type { ListPhase, Routine } from './routine.ts';

/**
 * `todo` nothing yet; `again` measured but not proven, do it once more; `ask` waits for an answer; `done` proven OK;
 * `settled` not proven, and somebody answered for leaving it so.
 */
export type StepState = 'todo' | 'again' | 'ask' | 'done' | 'settled';

/** Nothing more is to be done about it. */
export const isOver = (step: StepState): boolean => step === 'done' || step === 'settled';

/** Why a torque that is not proven was left as it is. */
export type Settlement =
  | { readonly kind: 'accepted'; readonly pull: number; readonly by: string; readonly reason: string }
  | { readonly kind: 'by-angle'; readonly turn: string; readonly why: string };

/** What is known of the plug that came out of a cylinder. */
export interface OldPlug {
  /** Null while nobody said how it looks. */
  readonly read: Pick<JobEventOf<'old-plugs-read'>, 'condition' | 'damage' | 'thread' | 'note'> | null;
  readonly gap: Pick<JobEventOf<'old-gap-measured'>, 'gapMm' | 'source'> | null;
  /** The pull that loosened it. */
  readonly removal: number | null;
}

/** What was said of the new plug for a cylinder. */
export type NewPlug = Pick<JobEventOf<'new-plugs-checked'>, 'part' | 'lot' | 'differs'>;

/** How an item of the routine was attested. */
export interface Attested {
  readonly as: string;
  readonly why?: string;
}

export interface GapAttempt {
  readonly reading: number;
  readonly tool: ToolId;
  readonly source: FigureSource;
  /** Who worked on the job then: a figure that was typed is attested by that person. */
  readonly technician: string;
  readonly judgement: Judgement;
  /** It stays on the record, and counts no more. */
  readonly takenBack?: true;
  /** It came before its turn, and somebody answers for keeping it: it is not proven. */
  readonly kept?: Pick<JobEventOf<'gap-kept'>, 'by' | 'reason'>;
}

export interface TorqueAttempt {
  readonly pull: Pull;
  /** Who worked on the job when it was pulled. */
  readonly technician: string;
  readonly kind: PullKind;
  readonly because: PlacementReason;
  readonly otherPull?: number;
  readonly leftOut?: number;
  readonly judgement: Judgement | null;
  /** The verdict on its turn, where the order asks for one; null where it was not measured. */
  readonly turn?: Judgement | null;
  readonly ask?: Ask;
  readonly evidence?: Evidence;
  /** Steps in front of all plugs that had not been done when it was pulled, free or not. */
  readonly undone?: readonly Step[];
  /** Steps that come before a pull and had not been done when its plug went in; free ones apart. */
  readonly early?: readonly Step[];
  /** A person said which plug it was on. */
  readonly given?: true;
  /** Set once a person answered the question that this pull raised. */
  readonly answer: Answer | null;
}

export interface CylinderState {
  readonly cylinder: number;
  readonly gap: StepState;
  readonly torque: StepState;
  readonly gaps: readonly GapAttempt[];
  /** In the order in which they were pulled. */
  readonly pulls: readonly TorqueAttempt[];
  /** Number of the last pull before the plug was backed off to start again; pulls up to it prove nothing. */
  readonly restartedAfter?: number;
  readonly settlement?: Settlement;
}

/** Something only a person can say. Pulls are held, and nothing is called OK, until it is answered. */
export interface Question {
  readonly pull: number;
  readonly cylinder: number;
  readonly kind:
    | 'over-window'
    | 'unsure'
    | 'cut'
    | 'loosened'
    | 'already-tight'
    | 'other-plug'
    | 'no-click'
    | 'loose'
    | 'end-of-scale'
    | 'by-plan'
    | 'early';
  readonly answers: readonly Answer[];
}

export interface ToolState {
  readonly tool: ToolId;
  readonly link: 'seeking' | 'linked' | 'lost';
  /** Why it is lost. */
  readonly end?: LinkEnd;
  readonly description?: ToolDescription;
  readonly source?: FigureSource;
  readonly driver?: string;
  /** What it sends is not what its profile says: no figure of it counts. */
  readonly stopped?: true;
}

/** One thing that was stated or read by hand, with what was there before it. */
export type Statement = { readonly takenBack?: true } & (
  | { readonly what: 'windows' }
  | { readonly what: 'list'; readonly phase: ListPhase; readonly was: Readonly<Record<string, Attested>> }
  | {
      readonly what: 'old-plugs';
      readonly cylinders: readonly number[];
      readonly was: readonly OldPlug['read'][];
    }
  | { readonly what: 'old-gap'; readonly cylinder: number; readonly gapMm: number }
  | {
      readonly what: 'new-plugs';
      readonly cylinders: readonly number[];
      readonly was: readonly (NewPlug | null)[];
    }
  | {
      readonly what: 'gap';
      readonly cylinder: number;
      readonly tool: ToolId;
      readonly reading: number;
      readonly gapMm: number;
    }
  | { readonly what: 'gap-inspected'; readonly cylinder: number; readonly sound: boolean }
  | {
      readonly what: 'scrapped';
      readonly cylinder: number;
      readonly reason: ScrapReason;
      /** The cylinder was started again since. */
      readonly forGood?: true;
      readonly was: {
        readonly cylinder: CylinderState;
        readonly plug: PlugState | null;
        readonly newPlug: NewPlug | null;
      };
    }
  | { readonly what: 'answer'; readonly pull: number; readonly cylinder: number; readonly answer: Answer }
  | { readonly what: 'by-angle'; readonly cylinder: number }
  | { readonly what: 'accepted'; readonly cylinder: number; readonly pull: number }
);

/** A gap reading that was given to no plug. */
export type HeldGap = Omit<JobEventOf<'gap-out-of-turn'>, 'type'>;

/** The last thing that came before its turn. */
export type TooEarly =
  | ({ readonly what: 'gap' } & HeldGap)
  | { readonly what: 'loosening' }
  | { readonly what: 'pull'; readonly cylinder: number; readonly steps: readonly Step[] };

/** The last thing that was judged, for the large letters. */
export interface LastVerdict {
  readonly quantity: 'torque' | 'length';
  readonly cylinder: number;
  readonly judgement: Judgement;
  /** The verdict on the turn, where the order asks for one; null where it was not measured. */
  readonly turn?: Judgement | null;
}

/** The plug in a cylinder now, or on its way there. */
export interface PlugState {
  /** How many of the cylinder's gap readings were of plugs before this one. */
  readonly gapsBefore: number;
  /** What its gap asks for; null while nobody measured it. */
  readonly step: GapStep | null;
}

/** See {@link JobState.beforeAnswer}. */
export type BeforeAnswer = Pick<
  JobState,
  | 'cylinders'
  | 'plugs'
  | 'newPlugs'
  | 'strays'
  | 'questions'
  | 'refitting'
  | 'chosen'
  | 'lastTight'
  | 'attested'
  | 'lastVerdict'
  | 'outOfOrder'
  | 'doneAfter'
  | 'beforeAnswer'
>;
/** What a tool can prove: its windows differ from those of another only by their guard bands. */
export interface ToolWindows {
  readonly window: Window;
  /** Of the first of two steps; null for a plain tightening, and of a gauge. */
  readonly firstWindow: Window | null;
}

/** Where a job stands: the fold of its events. */
export interface JobState {
  readonly order: WorkOrder;
  /** Who works on it now: the one the order names, or whoever took it over. */
  readonly technician: string;
  readonly instruments: readonly InstrumentInUse[];
  readonly torqueWindow: Window;
  /** Null where the gap is not measured. */
  readonly gapWindow: Window | null;
  /** What each tool can prove; the two windows above are those of the tools in use. */
  readonly windows: Readonly<Record<ToolId, ToolWindows>>;
  /** The wrench and the gauge that the last readings came from, else the first of each; null for none. */
  readonly inUse: Readonly<Record<Quantity, ToolId | null>>;
  /** The tool that the last pull or gap came from; null before the first. */
  readonly inHand: ToolId | null;
  /** Whose tools they are, where somebody said so. */
  readonly toolsOf: Readonly<Record<ToolId, string>>;
  readonly basis: Basis;
  readonly rules: string;
  readonly session: number;
  /** Null where the shop wants nothing said around the torque. */
  readonly routine: Routine | null;
  readonly windowsConfirmed: boolean;
  /** Somebody passed over the trial click. */
  readonly trialSkipped: boolean;
  /** By item of the routine. */
  readonly attested: Readonly<Record<string, Attested>>;
  /** By cylinder; missing while nothing is known. */
  readonly oldPlugs: Readonly<Record<number, OldPlug>>;
  readonly newPlugs: Readonly<Record<number, NewPlug>>;
  /** The cylinder whose old plug is read next; null when all are read. */
  readonly oldPlugTarget: number | null;
  /** Where its figures came from so far, in any of its sessions: each source once, in the order of its enum. */
  readonly sources: readonly FigureSource[];
  /** In service order. */
  readonly cylinders: readonly CylinderState[];
  /** By cylinder; one that is missing holds a plug that nothing has happened to. */
  readonly plugs: Readonly<Record<number, PlugState>>;
  /** The cylinder that the next gap reading goes to; null when all are done. */
  readonly gapTarget: number | null;
  /** The cylinder that the next pull goes to; null when all are done. */
  readonly torqueTarget: number | null;
  /** What a person chose out of order, while it is open. */
  readonly chosen: {
    readonly torque: number | null;
    readonly length: number | null;
    readonly 'old-plug': number | null;
  };
  /** The cylinder whose plug is being backed out to be fitted again. */
  readonly refitting: number | null;
  /** The cylinder of the last pull that reached the window or went beyond it. */
  readonly lastTight: number | null;
  readonly tools: Readonly<Record<ToolId, ToolState>>;
  /** Tools whose profile was contradicted, each with the driver that read it. */
  readonly stopped: Readonly<Record<ToolId, string>>;
  /** Pulls that belong to no cylinder: loosening, handling. */
  readonly strays: readonly TorqueAttempt[];
  readonly pullCount: number;
  readonly lastPull: Pull | null;
  readonly lastVerdict: LastVerdict | null;
  /** Until something else happens. */
  readonly tooEarly: TooEarly | null;
  /** Somebody keeps a gap that came too early; its verdict follows. */
  readonly keptGap: JobEventOf<'gap-kept'> | null;
  /** For each step that is done, the number of the last pull when it was done first; by step, and cylinder where it has one. */
  readonly doneAfter: Readonly<Record<string, number>>;
  /** What can be taken back, the oldest first. */
  readonly statements: readonly Statement[];
  /** What the last answer changed; null once work went on. */
  readonly beforeAnswer: BeforeAnswer | null;
  /** What came out of order and was no pull on a new plug. */
  readonly outOfOrder: readonly OutOfOrder[];
  readonly questions: readonly Question[];
  readonly closed: { readonly complete: boolean; readonly open: readonly OpenItem[] } | null;
  /** Who declared the job void, and why; it is then closed and not complete. */
  readonly voided: { readonly by: string; readonly reason: string } | null;
}
