import { valueScaling } from '../../../drivers/profile/decoder.ts';
import { scalingOf } from '../../../drivers/profile/figure.ts';
import { readProfile } from '../../../drivers/profile/file.ts';
import type { Frame } from '../../../drivers/profile/frame.ts';
import { type Cut, framerOf } from '../../../drivers/profile/framer.ts';
import type { Profile } from '../../../drivers/profile/schema.ts';
import { ProblemError } from '../../problem.ts';
import { scaled } from '../../reading.ts';
import { orThrow } from '../../result.ts';
import { fixed, w } from '../../words/catalogue.ts';
import { printJson } from '../answers/answer.ts';
import { checkedProfile } from '../answers/station.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { labelled, type Row } from '../terminal/labelled.ts';

export interface CheckOptions {
  readonly bytes: readonly string[];
  readonly json?: true;
}

/** Says whether a profile is valid and what it makes of bytes. */
export async function check(file: string, { bytes, json }: CheckOptions): Promise<ExitCode> {
  const profile = orThrow(await readProfile(file === '-' ? '/dev/stdin' : file));
  const frames = bytes.map(bytesOf).flatMap((sent) => framesIn(profile, sent));
  if (json === true) {
    printJson(checkedProfile(profile, frames));
    return EXIT.done;
  }
  for (const line of [...profileLines(profile), ...frames.flatMap((one) => frameLines(profile, one))])
    process.stdout.write(`${line}\n`);
  return EXIT.done;
}

function profileLines(profile: Profile): string[] {
  const { exponent, resolutionCounts } = valueScaling(profile.layout);
  return [
    w`${safeLine(profile.title)}: valid.`,
    ...labelled(
      [
        [w`source`, safeLine(profile.source)],
        ...linkRows(profile),
        [
          w`a step`,
          w`${amount(profile, resolutionCounts)}, recorded in steps of 10^${exponent} ${profile.quantity === 'torque' ? 'N·m' : 'm'}`,
        ],
      ],
      '  ',
    ),
  ];
}

function linkRows({ link }: Profile): readonly Row[] {
  const { by } = link;
  const how = { notify: w`notified`, poll: w`read`, ask: w`asked for`, sent: w`sent` }[by.how];
  const often = 'everyMs' in by ? w` every ${by.everyMs} ms` : '';
  if (link.kind === 'serial')
    return [
      [w`port`, w`${link.baud} baud`],
      [w`readings`, `${how}${often}`],
    ];
  return [
    [w`found`, w`by service ${link.advertised}`],
    [w`readings`, w`${link.characteristic} of service ${link.service}, ${how}${often}`],
  ];
}

/** The frames in bytes that are all of a stream. Throws where some of them are no frame. */
function framesIn(profile: Profile, bytes: Buffer) {
  const cuts: Cut[] = [];
  const framer = framerOf(profile, { openedUs: 0, fromStart: true });
  framer.push(bytes, 0, (cut) => void cuts.push(cut));
  framer.pause((cut) => void cuts.push(cut));
  return cuts.map(({ bytes: own, frame, problem }) => {
    const hex = own.toString('hex');
    if (problem !== undefined)
      throw new ProblemError({ ...problem, where: `${hex}, ${problem.where ?? ''}` });
    if (frame === undefined) throw new Error('what is no frame has a reason');
    const angle = scalingOf(profile.layout, 'angle');
    return {
      bytes: hex,
      frame,
      values: frame.counts.map((counts) => (counts === null ? null : amountOf(profile, counts))),
      anglesDeg:
        angle === undefined
          ? undefined
          : frame.angleCounts?.map((counts) => (counts === null ? null : scaled(counts, angle.exponent))),
    };
  });
}

function frameLines(
  profile: Profile,
  { bytes, frame, anglesDeg }: ReturnType<typeof framesIn>[number],
): string[] {
  const { counts, noValue, counter, unit }: Frame = frame;
  const samples = profile.layout.fields.find(({ is }) => is === 'samples');
  const spacingMs = (samples?.is === 'samples' ? samples.spacingMs : undefined) ?? 0;
  return [
    bytes,
    ...labelled(
      [
        ...(counter === undefined ? [] : [[w`counter`, `${counter}`] as const]),
        ...(unit === undefined ? [] : [[w`unit`, `${unit}`] as const]),
      ],
      '  ',
    ),
    ...(noValue === undefined ? [] : [w`  no value because ${safeLine(noValue)}`]),
    ...counts.map((one, i) => {
      const later = (counts.length - 1 - i) * spacingMs;
      const when = later > 0 ? w`, ${later} ms before the frame came` : '';
      const turned = anglesDeg?.[i];
      const angle = turned === undefined || turned === null ? '' : `, ${turned}°`;
      return w`  sample ${i + 1} ${one === null ? w`not known` : amount(profile, one)}${angle}${when}`;
    }),
  ];
}

function amount(profile: Profile, counts: number): string {
  const decimals = Math.max(0, -exponentOf(profile));
  return w`${fixed(amountOf(profile, counts), Math.min(decimals, 12))} ${profile.quantity === 'torque' ? 'N·m' : 'mm'} (${counts} counts)`;
}

/** In N·m or mm. */
const amountOf = (profile: Profile, counts: number) => scaled(counts, exponentOf(profile));
const exponentOf = ({ layout, quantity }: Profile) =>
  valueScaling(layout).exponent + (quantity === 'length' ? 3 : 0);

function bytesOf(text: string): Buffer {
  const hex = text.replaceAll(/[\s:]/g, '');
  if (!/^([0-9a-fA-F]{2})*$/.test(hex))
    throw new ProblemError({
      code: 'option-not-valid',
      where: '--bytes',
      message: w`"${text}" is not bytes in hexadecimal`,
      next: w`Give two digits a byte, for example --bytes "a5 01 00 00".`,
    });
  return Buffer.from(hex, 'hex');
}
