/** Why a link ended, why readings are missing, and why a device was refused. */
import type { Contradiction, DeviceRefusal, LinkEnd, MissReason } from '../../reading.ts';
import { phrases, w } from '../../words/catalogue.ts';

export const MISS_WORDS: Readonly<Record<MissReason, string>> = phrases({
  'out-of-reach': 'out of reach or switched off',
  'no-answer': 'it stopped answering',
  'ended-by-tool': 'ended by the tool',
  'tool-switching-off': 'the tool is switching off',
  'ended-by-station': 'ended by this station',
  'pairing-failed': 'the pairing failed',
  'pairing-missing': 'the tool asks for a pairing that is not there',
  'not-established': 'the connection could not be established',
  'recording-ended': 'the recording has ended',
  'port-gone': 'its serial port is gone',
  'link-ended': 'the link ended',
  'counter-jumped': 'its own counter jumped',
  'too-many': 'more than the station could take',
});

/** A reason of the Bluetooth controller that has no words is shown as its number. */
export function linkEndText({ reason, controllerReason: code }: LinkEnd): string {
  const words = MISS_WORDS[reason];
  return reason === 'link-ended' && code !== undefined ? w`${words}, reason 0x${code.toString(16)}` : words;
}

export const REFUSAL_WORDS: {
  readonly [R in DeviceRefusal['reason']]: (refusal: Pick<DeviceRefusal, 'address' | 'serial'>) => string;
} = {
  'same-name': ({ address }) =>
    w`a device at ${address} has the same name as the adopted tool. Its readings are ignored`,
  'other-serial': ({ address, serial }) =>
    serial === undefined
      ? w`the device at ${address} gives no serial number before pairing`
      : w`the device at ${address} has serial number ${serial}, which is not that of the adopted tool`,
  'not-encrypted': ({ address }) =>
    w`the device at ${address} does not ask for encryption, but the adopted tool does. Its readings are ignored`,
  'not-measuring': ({ address }) => w`the device at ${address} does not send the readings of this tool`,
  'not-as-described': ({ address }) => w`the device at ${address} is not as its profile describes it`,
  'other-format': ({ address }) =>
    w`the device at ${address} presents its readings in another format than the Bluetooth SIG defines. They cannot be trusted`,
};

/** What speaks against the profile of a tool. */
export const CONTRADICTION_WORDS: Readonly<Record<Contradiction, string>> = phrases({
  bytes: 'it sends bytes that its profile does not describe',
  figures: 'by its profile it reads figures that no tool can have',
});

export const deviceRefusalText = (refusal: DeviceRefusal): string => REFUSAL_WORDS[refusal.reason](refusal);
