import { PROFILE_UNITS, type ProfileUnit, unitMeasures } from '../../../drivers/profile/unit.ts';
import { type Capture, parseCapture } from '../../../drivers/replay/capture.ts';
import type { Sent, Stated } from '../../../drivers/teach/observed.ts';
import { teach as find, type Taught } from '../../../drivers/teach/teach.ts';
import { readBytes } from '../../files/input.ts';
import { outputFile, writeNew } from '../../files/output.ts';
import { ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { type Dialogue, openDialogue } from '../terminal/dialogue.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { dashed, teachLive } from './teach-live.ts';

export interface TeachOptions {
  readonly unit: string;
  readonly step: string;
  readonly rest?: string;
  /** `FIGURE=FILE` */
  readonly figure: readonly string[];
  readonly proof?: string;
  readonly baud: number;
  readonly restSeconds: number;
  readonly advertised?: string;
  readonly title: string;
  readonly out: string;
}

const MOST_BYTES = 1 << 24;

/** Finds the profile of a device: of one that is here, or from captures of it, each with the figure that its display showed. */
export async function teach(
  from: string | undefined,
  options: TeachOptions,
  open: () => Dialogue = openDialogue,
): Promise<ExitCode> {
  const unit = unitOf(options.unit);
  if (!/^\d{1,9}(\.\d{1,9})?$/.test(options.step) || Number(options.step) === 0)
    throw wrongOption(
      '--step',
      w`"${options.step}" is no step`,
      w`Give the smallest step of the display, for example 0.01.`,
    );
  outputFile(options.out);
  const taught =
    from === undefined ? await fromCaptures(options, unit) : await live(from, options, unit, open());
  for (const line of linesOf(taught, options.out)) process.stdout.write(`${safeLine(line)}\n`);
  if (taught.outcome !== 'taught') return EXIT.failed;
  await writeNew(options.out, Buffer.from(`${taught.text}\n`, 'utf8'));
  return EXIT.done;
}

async function live(
  from: string,
  { title, step, baud, restSeconds }: TeachOptions,
  unit: ProfileUnit,
  dialogue: Dialogue,
): Promise<Taught> {
  try {
    return await teachLive({ from, baud, title, unit, step, restMs: 1_000 * restSeconds }, dialogue);
  } finally {
    dialogue.close();
  }
}

async function fromCaptures(options: TeachOptions, unit: ProfileUnit): Promise<Taught> {
  if (options.rest === undefined || options.proof === undefined)
    throw wrongOption(
      options.rest === undefined ? '--rest' : '--proof',
      w`neither a device nor captures are named`,
      w`Name the address or the serial port of the device, or give --rest, --figure and --proof.`,
    );
  const rest = await captureOf(options.rest);
  const place = busiest(rest);
  const stated: Stated[] = [];
  for (const one of options.figure) stated.push(await statedOf('--figure', one, place));
  const proof = await statedOf('--proof', options.proof, place);
  return find({
    title: options.title,
    link: {
      kind: 'bluetooth-le',
      advertised: dashed(options.advertised ?? place.service),
      service: dashed(place.service),
      characteristic: dashed(place.characteristic),
      by: { how: 'notify' },
    },
    observed: { quantity: unitMeasures(unit), unit, step: options.step, rest: sentBy(rest, place), stated },
    proof,
  });
}

function linesOf(taught: Taught, out: string): readonly string[] {
  switch (taught.outcome) {
    case 'taught':
      return [
        w`Found: ${taught.summary}.`,
        w`The figure that was kept back reads ${Number(taught.readAs.toPrecision(6))}.`,
        w`The profile is in ${out}. Bytes that were not seen here are kept raw.`,
        w`Check "advertised" in it, and try it before you rely on it: plugmark driver check, and a replay of a capture.`,
      ];
    case 'ambiguous':
      return [
        w`Not written: more than one layout explains all of it.`,
        ...taught.fits.map((fit) => `  ${fit}`),
        taught.ask,
      ];
    case 'refused':
      return [w`Not written. ${taught.why}`];
  }
}

/** Where the bytes come from. */
interface Place {
  readonly service: string;
  readonly characteristic: string;
}

async function captureOf(file: string): Promise<Capture> {
  const bytes = await readBytes(file, w`capture`, MOST_BYTES);
  return orThrow(parseCapture(Buffer.from(bytes).toString('utf8'), file));
}

/** The characteristic that sent most. */
function busiest({ packets }: Capture): Place {
  const counts = new Map<string, number>();
  for (const { service, characteristic } of packets)
    if (service !== undefined && characteristic !== undefined)
      counts.set(`${service} ${characteristic}`, (counts.get(`${service} ${characteristic}`) ?? 0) + 1);
  const [most] = [...counts].toSorted(([, a], [, b]) => b - a);
  const [service, characteristic] = most?.[0].split(' ') ?? [];
  if (service === undefined || characteristic === undefined)
    throw wrongOption(
      '--rest',
      w`the capture holds no packets`,
      w`Record the device while it lies untouched.`,
    );
  return { service, characteristic };
}

const sentBy = ({ packets }: Capture, place: Place): Sent =>
  packets
    .filter((one) => one.service === place.service && one.characteristic === place.characteristic)
    .map(({ hex }) => Buffer.from(hex, 'hex'));

async function statedOf(option: string, text: string, place: Place): Promise<Stated> {
  const at = text.indexOf('=');
  const figure = text.slice(0, at);
  if (at < 1 || !/^-?\d{1,9}(\.\d{1,9})?$/.test(figure))
    throw wrongOption(
      option,
      w`"${text}" is not FIGURE=FILE`,
      w`For example ${option} 25.34=pull.capture.jsonl.`,
    );
  return { figure: Number(figure), sent: sentBy(await captureOf(text.slice(at + 1)), place) };
}

function unitOf(text: string): ProfileUnit {
  const unit = PROFILE_UNITS.find((one) => one === text || one.replace('·', '.') === text);
  if (unit === undefined)
    throw wrongOption(
      '--unit',
      w`"${text}" is no unit of a profile`,
      w`Choose one of: ${PROFILE_UNITS.join(', ')}.`,
    );
  return unit;
}

const wrongOption = (where: string, message: string, next: string) =>
  new ProblemError({ code: 'option-not-valid', where, message, next });
