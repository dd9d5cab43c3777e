import { describe, expect, it } from 'vitest';
import type { Arrival } from '../../../drivers/bluetooth/counter.ts';
import type { Profile } from '../../../drivers/profile/schema.ts';
import { FrameStream } from '../../../drivers/profile/stream.ts';
import { CATALOGUE } from '../../../sim/devices/catalogue.ts';
import { Sender } from '../../../sim/devices/device.ts';

// What a device sends may show that its profile is that of another one.

const TAUGHT: NonNullable<Profile['taught']> = {
  unit: 'N·m',
  step: '0.01',
  figures: [8.23, -6.41, 41.07],
  proof: 30.55,
  frames: 200,
};
const taught = (profile: Profile): Profile => ({ ...profile, taught: TAUGHT });

function link(profile: Profile) {
  const arrivals: Arrival[] = [];
  const stream = new FrameStream(profile, (arrival) => arrivals.push(arrival), {
    source: 'test',
    kind: 'value',
    openedUs: 0,
  });
  const sender = new Sender(profile);
  let atUs = 2_000_000;
  const send = (bytes: Uint8Array) => {
    atUs += 20_000;
    stream.take(bytes, atUs);
  };
  return {
    send,
    pull: (times: number) => {
      for (let i = 0; i < times; i++) send(sender.frame([{ si: i % 30 }]));
    },
    frame: () => sender.frame([{ si: 25 }]),
    contradicted: () => arrivals.flatMap((one) => (one.kind === 'contradicted' ? [one.because] : [])),
    kinds: () => arrivals.map(({ kind }) => kind),
  };
}

const status = CATALOGUE['status behind the value'];
/** A whole packet of the wrench with a status bit that nobody described. */
const strange = Buffer.from('09c403', 'hex');

describe('a profile that was taught', () => {
  it('is contradicted by three frames that it does not describe, and says so in front of the third', () => {
    const wrench = link(taught(status));
    wrench.pull(50);
    for (let i = 0; i < 2; i++) wrench.send(strange);
    expect(wrench.contradicted()).toEqual([]);
    wrench.send(strange);
    expect(wrench.contradicted()).toEqual(['bytes']);
    expect(wrench.kinds().slice(-2)).toEqual(['contradicted', 'raw']);
  });

  it('says so once', () => {
    const wrench = link(taught(status));
    for (let i = 0; i < 100; i++) wrench.send(strange);
    expect(wrench.contradicted()).toEqual(['bytes']);
  });

  it.each(['zero offset', 'unit by text', 'frames over several packets'] as const)(
    'is not contradicted by frames that were damaged on the way: %s',
    (name) => {
      const wrench = link(taught(CATALOGUE[name]));
      for (let i = 0; i < 10; i++) {
        wrench.pull(20);
        const damaged = wrench.frame();
        damaged.writeUInt8(damaged.readUInt8(1) ^ 0x10, 1);
        wrench.send(damaged);
      }
      wrench.pull(20);
      expect(wrench.contradicted()).toEqual([]);
      expect(wrench.kinds()).toContain('raw');
    },
  );

  it('is contradicted by frames with a good checksum around what it does not describe', () => {
    const wrench = link(taught(CATALOGUE['unit by a byte']));
    wrench.pull(20);
    const other = wrench.frame();
    other.writeUInt8(7, 0);
    other.writeUInt8(-other.subarray(0, -1).reduce((sum, byte) => sum + byte, 0) & 0xff, other.length - 1);
    for (let i = 0; i < 3; i++) wrench.send(other);
    expect(wrench.contradicted()).toEqual(['bytes']);
  });
});

describe('a profile from a document', () => {
  it('leaves a frame now and then to others: it is raw, and nothing is stopped', () => {
    const wrench = link(status);
    for (let i = 0; i < 20; i++) {
      wrench.pull(5);
      wrench.send(strange);
    }
    expect(wrench.contradicted()).toEqual([]);
    expect(wrench.kinds().filter((kind) => kind === 'raw')).toHaveLength(20);
  });

  it('is contradicted where more than half of what comes is no frame of it', () => {
    const wrench = link(status);
    wrench.pull(60);
    for (let i = 0; i < 31; i++) wrench.send(strange);
    expect(wrench.contradicted()).toEqual(['bytes']);
  });
});

it('figures that no wrench can have contradict any profile, three in a row', () => {
  const huge = CATALOGUE['frames over several packets'];
  const wrench = link(huge);
  const sender = new Sender(huge);
  wrench.pull(10);
  for (const nm of [5_000, 12, 5_000, 5_000]) wrench.send(sender.frame([{ si: nm }]));
  expect(wrench.contradicted()).toEqual([]);
  wrench.send(sender.frame([{ si: -9_000 }]));
  expect(wrench.contradicted()).toEqual(['figures']);
});
