import type { Arrival } from '../bluetooth/counter.ts';
import { Contradictions } from './contradiction.ts';
import { placedIn, scalingOf } from './figure.ts';
import type { Frame } from './frame.ts';
import { type Cut, type Framer, framerOf } from './framer.ts';
import type { Layout } from './layout-schema.ts';
import { sizeOf } from './number.ts';
import type { Profile } from './schema.ts';

/** What bytes of a serial port come from. */
export const SERIAL = 'serial';

export interface StreamOptions {
  /** Named beside bytes that are no frame: a characteristic, or {@link SERIAL}. */
  readonly source: string;
  readonly openedUs: number;
  /** `stored`: from the memory of the device, of readings that it took at another time. */
  readonly kind: 'value' | 'stored';
}

/** Turns the bytes of one link into arrivals: cuts frames, spreads samples over time and looks after the device's counter. */
export class FrameStream {
  readonly #framer: Framer;
  readonly #put: (arrival: Arrival) => void;
  readonly #options: StreamOptions;
  readonly #contradictions: Contradictions;
  #isContradicted = false;
  readonly #counter: CounterField | undefined;
  readonly #sampleSpacingUs: number;
  readonly #frameSpacingUs: number;
  readonly #skipsSame: boolean;
  #expected: number | undefined;
  #lastUs = Number.NEGATIVE_INFINITY;
  #last: Buffer | undefined;
  readonly #fullTurn: number | undefined;
  #angle: number | undefined;

  constructor(profile: Profile, put: (arrival: Arrival) => void, options: StreamOptions) {
    const { by } = profile.link;
    const isAsked = options.kind === 'stored' || by.how === 'ask' || by.how === 'poll';
    this.#framer = framerOf(profile, { openedUs: options.openedUs, fromStart: isAsked });
    this.#put = put;
    this.#options = options;
    this.#contradictions = new Contradictions(profile);
    this.#counter = counterOf(profile.layout);
    this.#fullTurn = fullTurnOf(profile.layout);
    this.#sampleSpacingUs = spacingUs(samplesOf(profile.layout)?.spacingMs);
    this.#frameSpacingUs = spacingUs('spacingMs' in profile.frames ? profile.frames.spacingMs : undefined);
    this.#skipsSame =
      options.kind === 'value' && (by.how === 'poll' || by.how === 'ask') && by.again !== 'reading';
  }

  take(bytes: Uint8Array, atUs: number): void {
    const cuts: Cut[] = [];
    this.#framer.push(bytes, atUs, (cut) => void cuts.push(cut));
    this.#putAll(cuts);
  }

  /** Nothing came for {@link pauseUs}. */
  pause(): void {
    const cuts: Cut[] = [];
    this.#framer.pause((cut) => void cuts.push(cut));
    this.#putAll(cuts);
  }

  /** After how much silence `pause` is to be called; undefined where it would change nothing. */
  get pauseUs(): number | undefined {
    return this.#framer.isWaiting ? this.#framer.quietUs : undefined;
  }

  /** Frames that came at once lie one behind the other; the last one came when they came. */
  #putAll(cuts: readonly Cut[]): void {
    const [only] = cuts;
    if (only !== undefined && cuts.length === 1) {
      this.#putCut(only, only.atUs);
      return;
    }
    let frames = cuts.filter(({ frame }) => frame !== undefined).length;
    for (const cut of cuts) {
      if (cut.frame !== undefined) frames -= 1;
      this.#putCut(cut, cut.atUs - frames * this.#frameSpacingUs);
    }
  }

  #putCut(cut: Cut, atUs: number): void {
    const because = this.#isContradicted ? null : this.#contradictions.take(cut);
    // In front of what shows it: no figure of that frame counts.
    if (because !== null) {
      this.#isContradicted = true;
      this.#put({ kind: 'contradicted', atUs: this.#stampUs(atUs), because });
    }
    this.#putPiece(cut, atUs);
  }

  #putPiece({ bytes, frame }: Cut, atUs: number): void {
    // What is asked for more often than it changes is one reading, not many.
    if (this.#skipsSame) {
      if (this.#last?.equals(bytes) === true) return;
      this.#last = Buffer.from(bytes);
    }
    const { kind, source } = this.#options;
    if (frame === undefined) {
      this.#put({ kind: 'raw', atUs: this.#stampUs(atUs), source, hex: bytes.toString('hex') });
      return;
    }
    const { counts, counter } = frame;
    if (kind === 'value' && counter !== undefined) this.#follow(counter, counts.length, atUs);
    for (let i = 0; i < counts.length; i++) this.#putSample(frame, i, atUs);
  }

  #putSample({ counts, angleCounts }: Frame, i: number, atUs: number): void {
    const { kind } = this.#options;
    const own = counts[i] ?? null;
    const later = kind === 'value' ? (counts.length - 1 - i) * this.#sampleSpacingUs : 0;
    const stampUs = this.#stampUs(atUs - later);
    const angle = angleCounts?.[i] ?? null;
    if (own === null) this.#put({ kind: 'not-known', atUs: stampUs });
    else if (angle === null) this.#put({ kind, atUs: stampUs, counts: own });
    else this.#put({ kind, atUs: stampUs, counts: own, angleCounts: this.#onward(angle) });
  }

  /** An angle that starts again at a full turn, counted on: nobody turns a tool by half a turn between two readings. */
  #onward(angle: number): number {
    const turn = this.#fullTurn;
    if (turn === undefined) return angle;
    const before = this.#angle ?? angle;
    this.#angle = angle + Math.round((before - angle) / turn) * turn;
    return this.#angle;
  }

  /** Time never goes back, even where a frame came sooner than its samples took. */
  #stampUs(atUs: number): number {
    this.#lastUs = Math.max(this.#lastUs, atUs);
    return this.#lastUs;
  }

  #follow(counter: number, samples: number, atUs: number): void {
    const field = this.#counter;
    if (field === undefined) return;
    const { span } = field;
    const step = field.counts === 'samples' ? samples : 1;
    const skipped = this.#expected === undefined ? 0 : (counter - this.#expected + span) % span;
    this.#expected = (counter + step) % span;
    if (skipped === 0) return;
    this.#put({
      kind: 'missed',
      atUs: Math.max(atUs, this.#lastUs),
      readings: field.counts === 'samples' ? skipped : skipped * samples,
      reason: 'counter-jumped',
    });
  }
}

const spacingUs = (ms: number | undefined) => Math.round((ms ?? 0) * 1_000);

interface CounterField {
  readonly counts: 'frames' | 'samples';
  /** It starts again from 0 behind this many. */
  readonly span: number;
}

export function counterOf(layout: Layout): CounterField | undefined {
  const item = placedIn(layout)
    .map((one) => one.item)
    .find(({ is }) => is === 'counter');
  if (item?.is !== 'counter') return undefined;
  const { counts } = item;
  if ('digits' in item) return { counts, span: 10 ** item.digits };
  return { counts, span: 2 ** ('bits' in item ? item.bits : 8 * sizeOf(item.type)) };
}

/** Counts of a full turn, where the angle of the device starts again behind one. */
function fullTurnOf(layout: Layout): number | undefined {
  const wraps = placedIn(layout).some(({ item }) => item.is === 'angle' && item.wraps === true);
  const scaling = wraps ? scalingOf(layout, 'angle') : undefined;
  return scaling && Math.round(360 / 10 ** scaling.exponent);
}

function samplesOf({ fields }: Layout) {
  const field = fields.find(({ is }) => is === 'samples');
  return field?.is === 'samples' ? field : undefined;
}
