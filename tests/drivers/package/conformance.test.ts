import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { conformance } from '../../../drivers/package/conformance.ts';
import type { Testable } from '../../../drivers/package/contract.ts';
import { loadFolder } from '../../../drivers/package/load.ts';
import { CATALOGUE } from '../../../sim/devices/catalogue.ts';
import { testableOf } from '../../../sim/devices/examples.ts';

const EXAMPLE = fileURLToPath(new URL('../../../sim/example/plugmark-driver-example', import.meta.url));

async function exampleDriver(): Promise<Testable> {
  const { driver } = await loadFolder(EXAMPLE);
  return { ...driver, streams: true };
}
const failing = (driver: Testable) =>
  conformance(driver)
    .filter(({ fault }) => fault !== null)
    .map(({ check }) => check);

interface Taking {
  take(bytes: Uint8Array): unknown[];
}

/** The example driver with one thing done badly. */
async function spoilt(spoil: (session: Taking, bytes: Uint8Array) => unknown): Promise<Testable> {
  const driver = await exampleDriver();
  return {
    ...driver,
    session: () => {
      const session = driver.session() as Taking;
      return { take: (bytes: Uint8Array) => spoil(session, bytes) };
    },
  };
}

describe('the conformance suite for drivers', () => {
  it('lets the example driver pass', async () => {
    expect(failing(await exampleDriver())).toEqual([]);
  });

  it.each(Object.entries(CATALOGUE))('lets a profile pass: %s', (_, profile) => {
    const checks = conformance(testableOf(profile));
    expect(checks.filter(({ fault, isWarning }) => fault !== null && !isWarning)).toEqual([]);
  });

  it('finds figures that the display does not show', async () => {
    const driver = await exampleDriver();
    const examples = driver.examples.map(({ hex, shows }) => ({
      hex,
      shows: shows.map((one) => one && one * 10),
    }));
    expect(failing({ ...driver, examples })).toContain('its examples are read as the display shows them');
  });

  it('finds a figure that is made up where the tool has none', async () => {
    const driver = await spoilt((session, bytes) =>
      session.take(bytes).map((one) => (Object(one).value === null ? { value: 0 } : one)),
    );
    expect(failing(driver)).toContain('what the tool sends when it has no value is no figure');
  });

  it('finds a driver that takes every piece for a frame', async () => {
    const driver = await exampleDriver();
    const afresh = {
      ...driver,
      session: () => ({ take: (bytes: Uint8Array) => (driver.session() as Taking).take(bytes) }),
    };
    expect(failing(afresh)).toContain('frames that come in pieces, or several at once, are read the same');
  });

  it('finds what one link leaves for the next', async () => {
    const driver = await exampleDriver();
    const only = driver.session();
    expect(failing({ ...driver, session: () => only })).toContain(
      'nothing of a link that ended gets into the next one',
    );
  });

  it('finds a driver that looks at a clock of its own', async () => {
    const driver = await spoilt((session, bytes) => (Date.now() > 0 ? session.take(bytes) : []));
    const [first] = conformance(driver);
    expect(first?.fault).toContain('the driver uses Date');
  });

  it('finds bytes that are passed over unseen', async () => {
    const driver = await spoilt((session, bytes) =>
      session.take(bytes).filter((one) => !('raw' in Object(one))),
    );
    expect(failing(driver)).toEqual(['bytes that it cannot read come back raw']);
  });

  it('finds bytes that are changed, and bytes that are kept', async () => {
    const changing = await spoilt((session, bytes) => {
      const made = session.take(bytes);
      bytes.fill(0);
      return made;
    });
    expect(failing(changing)).toContain('bytes that it was given stay as they are, and are not needed later');
  });

  it('finds readings that are none, and what throws', async () => {
    for (const spoil of [
      () => [{ value: 1.5 }],
      () => [{ value: 1, note: 'x' }],
      () => null,
      () => {
        throw new Error('no');
      },
    ])
      expect(failing(await spoilt(spoil))).toContain(
        'any damaged bit, and any noise, gives readings of the contract or raw bytes',
      );
  });

  it('says where a lost byte gives another figure, which the tool itself is to blame for', () => {
    const text = conformance(testableOf(CATALOGUE['lines of text']));
    expect(text.filter(({ fault }) => fault !== null)).toMatchObject([
      { check: 'a frame that lacks a byte gives no other figure', isWarning: true },
    ]);
  });
});
