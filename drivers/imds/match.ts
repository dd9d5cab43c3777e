import type { Problem } from '../../src/problem.ts';
import type { Sighting } from '../radio/radio.ts';
import { cleanText } from './text.ts';

/** How the station knows its tool: by address or serial number, which are unique, or by the name it advertises. */
export interface Match {
  readonly address?: string;
  readonly serial?: string;
  readonly name?: string;
}

/** A device in reach, its name fit for the screen. */
export interface Candidate {
  readonly address: string;
  readonly name: string;
}

export function candidateOf(sighting: Sighting): Candidate {
  return { address: sighting.address, name: cleanText(sighting.name ?? '') };
}

/** Whether the advertisement allows it to be the tool; a serial number shows only after joining. */
export function maybe(match: Match, candidate: Candidate): boolean {
  if (match.address !== undefined) return match.address.toLowerCase() === candidate.address.toLowerCase();
  return match.name === undefined || match.name === candidate.name;
}

export function ambiguous(match: Match, candidates: readonly Candidate[]): Problem {
  const list = candidates.map(({ address, name }) => `${address} "${name}"`).join(', ');
  const what = match.name === undefined ? 'measuring tools' : `tools named "${match.name}"`;
  return {
    code: 'tool-ambiguous',
    message: `There are ${candidates.length} ${what} in reach: ${list}.`,
    next: 'Name the tool by its address or serial number in the configuration of the station.',
  };
}

export function otherSerial(address: string, wanted: string, found: string | undefined): Problem {
  return {
    code: 'tool-other-serial',
    where: address,
    message: `The device at ${address} has ${found === undefined ? 'no serial number' : `serial number ${found}`} where ${wanted} is expected.`,
    next: 'See that the right tool is switched on, or correct the configuration of the station.',
  };
}
