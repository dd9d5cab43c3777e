import type { Instrument } from '../instrument/instrument.ts';
import { expandedUncertainty } from '../instrument/uncertainty.ts';
import type { Window } from '../metrology/judgement.ts';
import { windowOf } from '../metrology/window.ts';
import type { Problem } from '../problem.ts';
import { limitsMm, limitsNm } from '../quantity/compare.ts';
import { formatGap } from '../quantity/length.ts';
import { parseLengthRange, parseTorqueRange } from '../quantity/range.ts';
import { formatTorque } from '../quantity/torque.ts';
import { err, ok, type Result } from '../result.ts';
import { RULES } from './bench.ts';
import type { JobEventOf } from './event.ts';
import type { WorkOrder } from './order.ts';

/** Guard band as a multiple of the expanded uncertainty (ILAC-G8:09/2019, w = r·U with r = 1). */
const GUARD_BAND_FACTOR = 1;

/**
 * The opening of a job: order and instruments as they are today, with the windows that every reading will be held
 * against. Fails where a figure of the order cannot be read, an instrument is missing, or the instrument is too
 * uncertain to prove anything in this window.
 */
export function openJob(
  order: WorkOrder,
  instruments: readonly Instrument[],
): Result<JobEventOf<'job-opened'>> {
  const torque = parseTorqueRange(order.specification.torque);
  if (!torque.ok) return err(inOrder(torque.error, 'specification.torque'));
  const gap = parseLengthRange(order.specification.gap);
  if (!gap.ok) return err(inOrder(gap.error, 'specification.gap'));
  const wrench = instruments.find(({ quantity }) => quantity === 'torque');
  const gauge = instruments.find(({ quantity }) => quantity === 'length');
  if (wrench === undefined) return err(missing('torque wrench', 'torque'));
  if (gauge === undefined) return err(missing('gap gauge', 'length'));
  const { lowerNm, upperNm } = limitsNm(torque.value);
  const { lowerMm, upperMm } = limitsMm(gap.value);
  const torqueWindow = guarded('N.m', lowerNm, upperNm, wrench);
  const gapWindow = guarded('mm', lowerMm, upperMm, gauge);
  for (const [window, instrument] of [
    [torqueWindow, wrench],
    [gapWindow, gauge],
  ] as const)
    if (!window.decidable) return err(undecidable(window, instrument));
  return ok({
    type: 'job-opened',
    order,
    instruments: [...instruments],
    torqueWindow,
    gapWindow,
    rules: RULES,
  });
}

function guarded(
  unit: Window['unit'],
  lowerLimit: number,
  upperLimit: number,
  instrument: Instrument,
): Window {
  const expandedAt = (value: number) => expandedUncertainty(instrument, value);
  return windowOf({ unit, lowerLimit, upperLimit, guardBandFactor: GUARD_BAND_FACTOR, expandedAt });
}

function inOrder(problem: Problem, path: string): Problem {
  return { ...problem, where: problem.where === undefined ? path : `${path}, ${problem.where}` };
}

function missing(what: string, quantity: string): Problem {
  return {
    code: 'instrument-missing',
    where: 'tools',
    message: `the station has no ${what}`,
    next: `Add a tool with "quantity": "${quantity}" to the station file.`,
  };
}

function undecidable(window: Window, instrument: Instrument): Problem {
  const text = (value: number) => (window.unit === 'N.m' ? formatTorque(value) : formatGap(value));
  return {
    code: 'window-not-decidable',
    where: `tool ${instrument.id}`,
    message:
      `this instrument cannot prove anything between ${text(window.lowerLimit)} and ${text(window.upperLimit)}: ` +
      `its uncertainty (U = ${text(window.expandedAtUpper)}) fills the window from both sides`,
    next: `Use an instrument with an expanded uncertainty below ${text((window.upperLimit - window.lowerLimit) / 2)}.`,
  };
}
