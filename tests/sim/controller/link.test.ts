import { describe, expect, it } from 'vitest';
import { createLink } from '../../../sim/controller/link.ts';
import { virtualScheduler } from '../../../sim/scheduler.ts';

/** A link opened at 1 ms with an interval of 20 × 1.25 = 25 ms; `log` has what happened to each packet, and when. */
async function openLink() {
  const scheduler = virtualScheduler();
  await scheduler.runFor(1_000);
  const link = createLink(scheduler, 20);
  const log: string[] = [];
  const carry = (name: string) =>
    link.carry(
      () => void log.push(`${name} arrived ${scheduler.nowUs()}`),
      () => void log.push(`${name} lost ${scheduler.nowUs()}`),
    );
  return { scheduler, link, log, carry };
}

describe('the air', () => {
  it('carries packets at the next connection event, in order', async () => {
    const { scheduler, log, carry } = await openLink();
    carry('a');
    await scheduler.runFor(24_999);
    carry('b');
    await scheduler.runFor(2);
    carry('c');
    await scheduler.run();
    expect(log).toEqual(['a arrived 26000', 'b arrived 26000', 'c arrived 51000']);
  });

  it('lets nothing overtake when the interval becomes shorter', async () => {
    const { scheduler, link, log, carry } = await openLink();
    carry('slow');
    link.setInterval(6);
    carry('quick');
    await scheduler.run();
    carry('next');
    await scheduler.run();
    expect(log).toEqual(['slow arrived 26000', 'quick arrived 26000', 'next arrived 31000']);
  });

  it('loses what is under way when it ends, and all that comes later', async () => {
    const { scheduler, link, log, carry } = await openLink();
    carry('early');
    await scheduler.run();
    carry('under way');
    link.end();
    carry('late');
    await scheduler.run();
    expect(log).toEqual(['early arrived 26000', 'under way lost 26000', 'late lost 26000']);
  });
});
