import { readProfile } from '../../../drivers/profile/file.ts';
import { decodePacket, type Packet, scaleOfProfile } from '../../../drivers/profile/packet.ts';
import type { Profile } from '../../../drivers/profile/schema.ts';
import { ProblemError } from '../../problem.ts';
import { scaled } from '../../reading.ts';
import { orThrow } from '../../result.ts';
import { printJson } from '../answers/answer.ts';
import { checkedProfile } from '../answers/station.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';

export interface CheckOptions {
  readonly bytes: readonly string[];
  readonly json?: true;
}

/** Says whether a profile is valid and what it makes of packets. */
export async function check(file: string, { bytes, json }: CheckOptions): Promise<ExitCode> {
  const profile = orThrow(await readProfile(file === '-' ? '/dev/stdin' : file));
  const packets = bytes.map(bytesOf);
  if (json === true) {
    printJson(
      checkedProfile(
        profile,
        packets.map((packet) => packetIn(profile, packet)),
      ),
    );
    return EXIT.done;
  }
  for (const line of [...profileLines(profile), ...packets.flatMap((packet) => packetLines(profile, packet))])
    process.stdout.write(`${line}\n`);
  return EXIT.done;
}

function profileLines(profile: Profile): string[] {
  const { exponent, resolutionCounts } = scaleOfProfile(profile);
  const { by, service, characteristic } = profile.readings;
  const how = by.how === 'notify' ? 'notified' : `read every ${by.everyMs} ms`;
  return [
    `${safeLine(profile.title)}: valid.`,
    `  source   ${safeLine(profile.source)}`,
    `  found    by service ${profile.advertised}`,
    `  readings ${characteristic} of service ${service}, ${how}`,
    `  a step   ${amount(profile, resolutionCounts)}, recorded in steps of 10^${exponent} ${unitOf(profile)}`,
  ];
}

function decodedIn(profile: Profile, packet: Buffer): Packet {
  const decoded = decodePacket(profile, packet);
  if (!decoded.ok)
    throw new ProblemError({
      ...decoded.error,
      where: `${packet.toString('hex')}, ${decoded.error.where ?? ''}`,
    });
  return decoded.value;
}

function packetIn(profile: Profile, bytes: Buffer) {
  const packet = decodedIn(profile, bytes);
  const values = packet.samples.map((counts) => (counts === null ? null : amountOf(profile, counts)));
  return { bytes: bytes.toString('hex'), packet, values };
}

function packetLines(profile: Profile, packet: Buffer): string[] {
  const { samples, noValue, counter } = decodedIn(profile, packet);
  const { spacingMs } = profile.packet.samples;
  return [
    packet.toString('hex'),
    ...(counter === undefined ? [] : [`  counter  ${counter}`]),
    ...(noValue === undefined ? [] : [`  no value because ${safeLine(noValue)}`]),
    ...samples.map((counts, i) => {
      const later = (samples.length - 1 - i) * (spacingMs ?? 0);
      const when = later > 0 ? `, ${later} ms before the packet came` : '';
      return `  sample ${i + 1} ${counts === null ? 'not known' : amount(profile, counts)}${when}`;
    }),
  ];
}

function amount(profile: Profile, counts: number): string {
  const decimals = Math.max(0, -exponentOf(profile));
  return `${amountOf(profile, counts).toFixed(Math.min(decimals, 12))} ${profile.quantity === 'torque' ? 'N·m' : 'mm'} (${counts} counts)`;
}

/** In N·m or mm. */
const amountOf = (profile: Profile, counts: number) => scaled(counts, exponentOf(profile));
const exponentOf = (profile: Profile) =>
  scaleOfProfile(profile).exponent + (profile.quantity === 'length' ? 3 : 0);
const unitOf = ({ quantity }: Profile) => (quantity === 'torque' ? 'N·m' : 'm');

function bytesOf(text: string): Buffer {
  const hex = text.replaceAll(/[\s:]/g, '');
  if (!/^([0-9a-fA-F]{2})*$/.test(hex))
    throw new ProblemError({
      code: 'option-not-valid',
      where: '--bytes',
      message: `"${text}" is not bytes in hexadecimal`,
      next: 'Give two digits a byte, for example --bytes "a5 01 00 00".',
    });
  return Buffer.from(hex, 'hex');
}
