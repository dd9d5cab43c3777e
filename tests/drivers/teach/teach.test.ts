import { createCipheriv } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { decoderOf, valueScaling } from '../../../drivers/profile/decoder.ts';
import { framerOf } from '../../../drivers/profile/framer.ts';
import { teach } from '../../../drivers/teach/teach.ts';
import { CATALOGUE, type DeviceName } from '../../../sim/devices/catalogue.ts';
import { Sender } from '../../../sim/devices/device.ts';
import { scaled } from '../../../src/reading.ts';
import { lessonOn } from './bench.ts';

const PEAKS = [8.23, 15.78, -6.41, 25.34, 41.07];
const PROOF = 30.55;

/** Those whose frames hold something that no torque on the display explains. */
const REFUSED: readonly DeviceName[] = ['torque and angle'];

describe('devices of the catalogue, taught with five figures and proven with a sixth', () => {
  test.each(Object.keys(CATALOGUE) as DeviceName[])('%s', (name) => {
    const profile = CATALOGUE[name];
    const taught = teach(lessonOn(profile, PEAKS, PROOF));
    if (REFUSED.includes(name)) {
      expect(taught).toMatchObject({ outcome: 'refused' });
      return;
    }
    expect(taught, JSON.stringify(taught, null, 1)).toMatchObject({ outcome: 'taught' });
    if (taught.outcome !== 'taught') return;
    // What the device sends of any torque is read as its own profile reads it, or not at all.
    const { exponent } = valueScaling(taught.profile.layout);
    const sender = new Sender(profile);
    const stream = (si: number) => {
      const samples = profile.layout.fields.some((field) => field.is === 'samples') ? 4 : 1;
      return sender.frame(Array.from({ length: samples }, () => ({ si })));
    };
    for (const nm of [0, 0.5, 3.33, -2.5, 12.05, 27.41, 44.4]) {
      const values: number[] = [];
      const framer = framerOf(taught.profile, { openedUs: 0, fromStart: true });
      framer.push(stream(nm), 0, ({ frame }) => {
        for (const counts of frame?.counts ?? []) values.push(scaled(counts ?? Number.NaN, exponent));
      });
      expect(values.length, `${name} at ${nm}`).toBeGreaterThan(0);
      for (const value of values) expect(Math.abs(value - nm)).toBeLessThanOrEqual(0.051);
    }
  });
});

describe('nothing is taught wrongly', () => {
  const device = CATALOGUE['sign and magnitude'];

  test('a device that encrypts is refused', () => {
    let packets = 0;
    const encrypted = lessonOn(device, PEAKS, PROOF, (packet) => {
      packets += 1;
      const iv = Buffer.alloc(16);
      iv.writeUInt32BE(packets);
      return createCipheriv('aes-128-ctr', Buffer.alloc(16, 7), iv).update(packet);
    });
    expect(teach(encrypted)).toMatchObject({ outcome: 'refused', why: expect.stringMatching(/encrypt/) });
  });

  test('a byte that changes and that nothing explains is no byte to be left out', () => {
    let packets = 0;
    const strange = lessonOn(CATALOGUE['negative scale'], PEAKS, PROOF, (packet) => {
      packets += 1;
      return Buffer.concat([packet, Buffer.of((packets * packets * 7) % 251)]);
    });
    expect(teach(strange)).toMatchObject({ outcome: 'refused', why: expect.stringMatching(/bytes 3 /) });
  });

  test.each([1, 2, 3, 5, 8])(
    'a stream that was first heard %i bytes behind the beginning of a frame is cut right',
    (late) => {
      const lesson = lessonOn(CATALOGUE['frames over several packets'], PEAKS, PROOF);
      const behind = (sent: readonly Buffer[]) => [Buffer.concat(sent).subarray(late)];
      const { rest, stated } = lesson.observed;
      const observed = {
        ...lesson.observed,
        rest: behind(rest),
        stated: stated.map(({ figure, sent }) => ({ figure, sent: behind(sent) })),
      };
      const taught = teach({ ...lesson, observed });
      expect(taught, JSON.stringify(taught)).toMatchObject({ outcome: 'taught' });
      expect(taught.outcome === 'taught' && taught.profile.layout.fields[0]).toMatchObject({
        is: 'fixed',
        hex: 'a55a09',
      });
    },
  );

  test('without a figure against the tightening direction it asks for one', () => {
    const lesson = lessonOn(CATALOGUE['status behind the value'], [8.23, 15.78, 25.34], PROOF);
    // It never read below 0: signed and unsigned cannot be told apart.
    const above = (sent: readonly Buffer[]) => sent.filter((packet) => packet.readInt16BE(0) >= 0);
    const { rest, stated } = lesson.observed;
    const observed = {
      ...lesson.observed,
      rest: above(rest),
      stated: stated.map(({ figure, sent }) => ({ figure, sent: above(sent) })),
    };
    const asked = teach({ ...lesson, observed });
    expect(asked).toMatchObject({ outcome: 'ambiguous', ask: expect.stringMatching(/minus/) });
    if (asked.outcome === 'ambiguous') expect(asked.fits.length).toBeGreaterThan(1);
  });

  test('a figure that was mistyped, or a proof that does not hold, writes nothing', () => {
    const lesson = lessonOn(device, PEAKS, PROOF);
    const mistyped = lesson.observed.stated.map((stated, i) =>
      i === 3 ? { ...stated, figure: 26.34 } : stated,
    );
    expect(teach({ ...lesson, observed: { ...lesson.observed, stated: mistyped } })).toMatchObject({
      outcome: 'refused',
    });
    expect(teach({ ...lesson, proof: { ...lesson.proof, figure: 35.05 } })).toMatchObject({
      outcome: 'refused',
      why: expect.stringMatching(/kept back/),
    });
  });

  test('too few figures prove nothing', () => {
    expect(teach(lessonOn(device, [8.23, 15.78], PROOF))).toMatchObject({ outcome: 'refused' });
  });

  test.each<DeviceName>(['flag below the value', 'flag above the value', '12 bits'])(
    '%s: a bit that the lesson never moved makes the frame raw once it moves',
    (name) => {
      const taught = teach(lessonOn(CATALOGUE[name], PEAKS, PROOF));
      expect(taught.outcome).toBe('taught');
      if (taught.outcome !== 'taught') return;
      const sender = new Sender(CATALOGUE[name]);
      const decode = decoderOf(taught.profile.layout);
      expect(decode(sender.frame([{ si: 25 }])).ok).toBe(true);
      expect(decode(sender.frame([{ si: null }])).ok).toBe(false);
    },
  );

  test('a gauge whose highest bits the lesson never moved is not read with them', () => {
    const frame = (mm: number, flags = 0) => {
      const bytes = Buffer.alloc(2);
      bytes.writeUInt16BE(Math.round(mm * 1_000) + flags);
      return bytes;
    };
    const held = (mm: number) => ({ figure: mm, sent: Array.from({ length: 12 }, () => frame(mm)) });
    const taught = teach({
      title: 'gauge',
      link: lessonOn(device, PEAKS, PROOF).link,
      observed: {
        quantity: 'length',
        unit: 'mm',
        step: '0.001',
        rest: held(0).sent,
        stated: [0.503, 0.752, 1.104, 0.911].map(held),
      },
      proof: held(0.655),
    });
    expect(taught.outcome, JSON.stringify(taught)).toBe('taught');
    if (taught.outcome !== 'taught') return;
    const decode = decoderOf(taught.profile.layout);
    expect(decode(frame(0.7)).ok).toBe(true);
    for (const bit of [11, 12, 13, 14, 15]) expect(decode(frame(0.7, 2 ** bit)).ok, `bit ${bit}`).toBe(false);
  });

  test('a taught profile takes bytes that it has not seen as raw, such as a status that changes', () => {
    const taught = teach(lessonOn(CATALOGUE['status behind the value'], PEAKS, PROOF));
    expect(taught.outcome).toBe('taught');
    if (taught.outcome !== 'taught') return;
    const sender = new Sender(CATALOGUE['status behind the value']);
    const decode = decoderOf(taught.profile.layout);
    expect(decode(sender.frame([{ si: 25 }])).ok).toBe(true);
    expect(decode(sender.frame([{ si: null }])).ok).toBe(false);
  });
});
