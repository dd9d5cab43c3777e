import { setTimeout as sleep } from 'node:timers/promises';
import { realAfter } from '../../../drivers/after.ts';
import { heard, visit } from '../../../drivers/bluetooth/survey.ts';
import { type ProfileUnit, unitMeasures } from '../../../drivers/profile/unit.ts';
import { openRadio } from '../../../drivers/radio/open.ts';
import type { Link } from '../../../drivers/radio/radio.ts';
import { openSerial } from '../../../drivers/serial/open.ts';
import { GrowingLesson, type Progress } from '../../../drivers/teach/growing.ts';
import type { Sent } from '../../../drivers/teach/observed.ts';
import type { Taught } from '../../../drivers/teach/teach.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import type { Dialogue } from '../terminal/dialogue.ts';

/** Where the device is: a Bluetooth address, or a serial port. */
export interface LiveOptions {
  readonly from: string;
  readonly baud: number;
  readonly title: string;
  readonly unit: ProfileUnit;
  readonly step: string;
  /** How long it is left untouched. */
  readonly restMs: number;
}

/** A device at the bench. */
interface Bench {
  /** Of the profile. */
  readonly link: Readonly<Record<string, unknown>>;
  /** What came since it was last asked. */
  readonly sent: () => Sent;
  readonly isDown: () => boolean;
}

/** Where nothing comes at rest, nobody knows what a zero looks like. */
const FEWEST_BYTES = 6;

/** A lesson with somebody at the bench, from the first question to the profile, or to why there is none. */
export function teachLive(
  options: LiveOptions,
  dialogue: Dialogue,
): Promise<Exclude<Taught, { outcome: 'ambiguous' }>> {
  return /^([0-9a-f]{2}:){5}[0-9a-f]{2}$|^[0-9a-f]{32}$/i.test(options.from)
    ? onAir(options, dialogue)
    : onPort(options, dialogue);
}

async function onAir(options: LiveOptions, dialogue: Dialogue) {
  const radio = orThrow(await openRadio());
  try {
    const device = orThrow(await heard(radio, options.from, HEARD_MS, realAfter));
    return orThrow(
      await visit(radio, device.address, async (link) => {
        const packets: {
          readonly service: string;
          readonly characteristic: string;
          readonly bytes: Buffer;
        }[] = [];
        await subscribeAll(link, (service, characteristic, bytes) =>
          packets.push({ service, characteristic, bytes: Buffer.from(bytes) }),
        );
        dialogue.say(w`Linked with ${device.name === '' ? device.address : device.name}.`);
        let isDown = false;
        void link.down.then(() => {
          isDown = true;
        });
        await atRest(options, dialogue);
        const rest = packets.splice(0);
        const place = busiest(rest);
        if (place === null) throw new ProblemError(silent(options.from));
        const own = (all: typeof packets) =>
          all
            .filter(({ characteristic }) => characteristic === place.characteristic)
            .map(({ bytes }) => bytes);
        const advertised = device.services.includes(place.service) ? place.service : device.services[0];
        const bench: Bench = {
          link: {
            kind: 'bluetooth-le',
            advertised: dashed(advertised ?? place.service),
            service: dashed(place.service),
            characteristic: dashed(place.characteristic),
            by: { how: 'notify' },
          },
          sent: () => own(packets.splice(0)),
          isDown: () => isDown,
        };
        return lesson(options, dialogue, bench, own(rest));
      }),
    );
  } finally {
    await radio.close();
  }
}

const HEARD_MS = 10_000;

export const dashed = (uuid: string): string =>
  uuid.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');

async function subscribeAll(
  link: Link,
  take: (service: string, characteristic: string, bytes: Uint8Array) => void,
) {
  const characteristics = orThrow(await link.discover([]));
  for (const of of characteristics)
    if (of.properties.some((property) => property === 'notify' || property === 'indicate'))
      orThrow(await link.subscribe(of, (bytes) => take(of.service, of.uuid, bytes)));
}

/** The characteristic that sent most. */
function busiest(packets: readonly { readonly service: string; readonly characteristic: string }[]) {
  const counts = new Map<string, number>();
  for (const { characteristic } of packets) counts.set(characteristic, (counts.get(characteristic) ?? 0) + 1);
  const [most] = [...counts].toSorted(([, a], [, b]) => b - a);
  const found = packets.find(({ characteristic }) => characteristic === most?.[0]);
  return found === undefined ? null : { service: found.service, characteristic: found.characteristic };
}

async function onPort(options: LiveOptions, dialogue: Dialogue) {
  const { from, baud } = options;
  const port = orThrow(await openSerial(from, { baud, dataBits: 8, parity: 'none', stopBits: 1 }));
  try {
    const pieces: Buffer[] = [];
    let isDown = false;
    void port.down.then(() => {
      isDown = true;
    });
    port.listen((bytes) => void pieces.push(Buffer.from(bytes)));
    dialogue.say(w`Listening at ${from}, ${baud} baud.`);
    await atRest(options, dialogue);
    const rest = pieces.splice(0);
    const link = { kind: 'serial', baud, by: { how: 'sent' } };
    return await lesson(
      options,
      dialogue,
      { link, sent: () => pieces.splice(0), isDown: () => isDown },
      rest,
    );
  } finally {
    await port.close();
  }
}

async function atRest({ restMs, unit }: LiveOptions, dialogue: Dialogue): Promise<void> {
  await dialogue.ask(
    unitMeasures(unit) === 'torque'
      ? w`Lay the wrench down. Enter, and leave it untouched. `
      : w`Close the gauge, or leave it as it is. Enter, and leave it untouched. `,
  );
  await sleep(restMs);
}

async function lesson(options: LiveOptions, dialogue: Dialogue, bench: Bench, rest: Sent) {
  const { title, unit, step, from } = options;
  if (Buffer.concat(rest).length < FEWEST_BYTES) throw new ProblemError(silent(from));
  const growing = new GrowingLesson({ title, link: bench.link, quantity: unitMeasures(unit), unit, step });
  growing.rested(rest);
  bench.sent();
  let ask = growing.first;
  for (;;) {
    const figure = await figureOf(
      dialogue,
      w`${growing.figures + 1}. ${ask} Then type what its display showed, in ${unit}: `,
    );
    if (bench.isDown()) throw new ProblemError(gone(from));
    if (figure === 'back') {
      ask = growing.takeBack();
      bench.sent();
      continue;
    }
    const progress = growing.took({ figure, sent: bench.sent() });
    for (const line of linesOf(progress)) dialogue.say(line);
    if (progress.outcome === 'more') ask = progress.ask;
    else if (progress.outcome === 'taught' || !(await mistyped(dialogue))) return progress;
    else ask = growing.takeBack();
    bench.sent();
  }
}

async function figureOf(dialogue: Dialogue, prompt: string): Promise<number | 'back'> {
  for (;;) {
    const answer = (await dialogue.ask(prompt)).replace(',', '.');
    if (answer === 'back') return answer;
    if (/^[+-]?\d{1,9}(\.\d{1,9})?$/.test(answer)) return Number(answer);
    dialogue.say(
      w`That is not a figure. Type it as the display showed it, for example 25.34; "back" takes the last one back.`,
    );
    if (!dialogue.patient) throw new ProblemError(notAFigure(answer));
  }
}

const mistyped = async (dialogue: Dialogue): Promise<boolean> =>
  dialogue.patient &&
  (await dialogue.ask(w`Was the last figure mistyped? Type "back" to give it again; Enter ends. `)) ===
    'back';

function linesOf(progress: Progress): readonly string[] {
  if (progress.outcome !== 'more' || progress.fits === null) return [];
  const { fits } = progress;
  return fits.length === 1
    ? [w`One layout explains all of it so far: ${fits[0] ?? ''}.`]
    : [w`${fits.length} layouts explain all of it so far:`, ...fits.map((fit) => `  ${fit}`)];
}

const silent = (where: string): Problem => ({
  code: 'device-silent',
  where,
  message: w`the device sent nothing while it lay untouched`,
  next: w`Switch it on and set it to send by itself. One that sends only what it is asked for cannot be taught.`,
});

const gone = (where: string): Problem => ({
  code: 'link-lost',
  where,
  message: w`the device has gone in the middle of the lesson`,
  next: w`Keep it near, switched on and charged, and begin again.`,
});

const notAFigure = (answer: string): Problem => ({
  code: 'answer-not-valid',
  where: answer.slice(0, 40),
  message: w`this is not a figure`,
  next: w`Give one line for each question, with the figure of the display.`,
});
