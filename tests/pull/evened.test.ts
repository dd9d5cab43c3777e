import { describe, expect, it } from 'vitest';
import { Random } from '../../sim/random.ts';
import { evened } from '../../src/pull/evened.ts';
import { RecentSamples } from '../../src/pull/recent.ts';
import type { Arrivals } from '../../src/pull/sample-clock.ts';

const STEP_US = 5_000;

/** Samples every 5 ms, `packet` of them together, late by a jitter; packets of which `gone` says so never come. */
function arrived(packet: number, jitterUs: number, gone: (k: number) => boolean = () => false) {
  const random = new Random(`${packet} ${jitterUs}`);
  const recent = new RecentSamples();
  const takenUs: number[] = [];
  let lastUs = 0;
  for (let k = 0; k * packet < 80; k++) {
    if (gone(k)) continue;
    const sentUs = ((k + 1) * packet - 1) * STEP_US;
    lastUs = Math.max(lastUs, sentUs + Math.abs(random.normal(0, jitterUs)));
    for (let j = 0; j < packet; j++) {
      recent.add(lastUs, 20, lastUs, takenUs.length);
      takenUs.push((k * packet + j) * STEP_US);
    }
  }
  return { recent, takenUs };
}

/** How far the steps between samples come out wrong, at most. */
function mostOffUs(packet: number, jitterUs: number, gone?: (k: number) => boolean): number {
  const { recent, takenUs } = arrived(packet, jitterUs, gone);
  const arrivals: Arrivals = {
    intervalUs: STEP_US,
    packetUs: Math.max(packet, 1.2) * STEP_US,
    bunched: packet > 1,
    even: false,
  };
  const samples = evened(recent, takenUs.length - 20, arrivals);
  const off = takenUs.map((us, i) => (samples.has(i) ? samples.timeUs(i) - us : Number.NaN));
  const known = off.filter((us) => !Number.isNaN(us));
  return Math.max(...known) - Math.min(...known);
}

describe('the times at which samples were taken', () => {
  it.each([
    ['one by one, with jitter', 1, 3_000],
    ['four a packet', 4, 0],
    ['ten a packet, with jitter', 10, 3_000],
  ])('are even however they came: %s', (_how, packet, jitterUs) => {
    expect(mostOffUs(packet, jitterUs)).toBeLessThan(STEP_US / 2);
  });

  it.each([
    ['four a packet', 4, 0],
    ['ten a packet', 10, 2_000],
  ])('show where a packet is missing, though nothing counts them: %s', (_how, packet, jitterUs) => {
    const lost = Math.floor(60 / packet) - 1;
    expect(mostOffUs(packet, jitterUs, (k) => k === lost)).toBeLessThan(STEP_US);
  });

  it('show no gap where a packet was only held up', () => {
    const recent = new RecentSamples();
    for (let i = 0; i < 80; i++) {
      const packetEndUs = (4 * Math.floor(i / 4) + 3) * STEP_US;
      // The twelfth packet comes with the thirteenth.
      const us = Math.floor(i / 4) === 12 ? packetEndUs + 4 * STEP_US : packetEndUs;
      recent.add(us, 20, us, i);
    }
    const samples = evened(recent, 60, {
      intervalUs: STEP_US,
      packetUs: 4 * STEP_US,
      bunched: true,
      even: false,
    });
    for (let i = 2; i < 80; i++) expect(samples.timeUs(i) - samples.timeUs(i - 1)).toBeCloseTo(STEP_US, 6);
  });
});
