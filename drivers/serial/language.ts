import type { ToolDescription } from '../../src/reading.ts';
import type { Arrival } from '../bluetooth/counter.ts';
import { aboutOf } from '../profile/language.ts';
import { driverBy } from '../profile/name.ts';
import type { SerialProfile } from '../profile/schema.ts';
import { FrameStream } from '../profile/stream.ts';
import type { Pausing } from '../profile/timed.ts';
import type { SerialSettings } from './port.ts';

/** How a tool on a serial port is spoken to. What is the same for all of them, the life of the port, is in tool.ts. */
export interface SerialLanguage {
  readonly driver: string;
  readonly settings: SerialSettings;
  readonly about: Omit<ToolDescription, 'link'>;
  /** What is written once the port is open, in hexadecimal digits. */
  readonly start: readonly string[];
  /** What is written again and again: to ask for a reading, or so that the tool goes on. */
  readonly ask?: { readonly hex: string; readonly everyMs: number };
  readonly keepAlive?: { readonly hex: string; readonly everyMs: number };
  /** A new one for each link. */
  readonly stream: (put: (arrival: Arrival) => void, source: string, openedUs: number) => Pausing;
}

/** The language of a tool that a profile describes. */
export function described(profile: SerialProfile): SerialLanguage {
  const { by, start = [], keepAlive } = profile.link;
  return {
    driver: driverBy('serial', profile),
    settings: profile.link,
    about: aboutOf(profile),
    start: start.map(({ hex }) => hex),
    ...(by.how === 'ask' && { ask: by }),
    ...(keepAlive !== undefined && { keepAlive }),
    stream: (put, source, openedUs) => new FrameStream(profile, put, { source, kind: 'value', openedUs }),
  };
}
