/** What `plugmark window` is asked about: an order and a station, or what was typed in their place. */

import { z } from 'zod';
import type { Instrument } from '../../instrument/instrument.ts';
import { type Decision, USUAL_DECISION } from '../../job/basis.ts';
import { type WorkOrder, workOrderSchema } from '../../job/order.ts';
import { decisionRuleSchema } from '../../metrology/decision.ts';
import { type Adapter, adapterSchema, type FlexJoint, flexJointSchema } from '../../plug/geometry.ts';
import {
  headMaterialSchema,
  seatSchema,
  threadConditionSchema,
  threadSchema,
} from '../../plug/specification.ts';
import { ProblemError, problemFromZod } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';
import { today } from '../station/clock.ts';
import { readJson } from '../station/json-file.ts';
import { readStationFile } from '../station/station-file.ts';

export interface WindowOptions {
  readonly order?: string;
  readonly station?: string;
  readonly thread: string;
  readonly seat: string;
  readonly head: string;
  readonly lubrication: string;
  /** Where a picture goes. */
  readonly svg?: string;
  readonly permissible?: number;
  readonly resolution: number;
  readonly arm?: number;
  readonly offset?: number;
  readonly angle?: number;
  readonly bent?: number;
  readonly reading?: string;
  readonly rule?: string;
  readonly r: number;
  readonly atLeast: number;
  readonly grades?: true;
  readonly spread?: number;
  /** Readings a second. */
  readonly rate?: number;
  readonly on?: string;
  readonly json?: true;
}

/** The order of the file, or one around a figure that was typed; what was typed goes before the file. */
export async function orderFrom(typed: string | undefined, options: WindowOptions): Promise<WorkOrder> {
  const given =
    options.order === undefined
      ? null
      : await readJson(options.order, workOrderSchema, w`work order`, '"plugmark manual work-order"');
  if (given === null && typed === undefined)
    throw new ProblemError({
      code: 'nothing-named',
      message: w`neither a torque nor an order was named`,
      next: w`Type a range, for example "25-30 N·m", or give --order FILE.`,
    });
  const adapter = adapterFrom(options) ?? given?.adapter;
  const order =
    given === null
      ? orderOf(typed ?? '', options)
      : {
          ...given,
          specification: { ...given.specification, ...(typed === undefined ? {} : { torque: typed }) },
        };
  return {
    ...order,
    ...(adapter === undefined ? {} : { adapter }),
    ...(options.bent === undefined ? {} : { flexJoint: universalJoint(options.bent) }),
  };
}

/** An order around a figure that was typed at the command line. */
function orderOf(torque: string, options: WindowOptions): WorkOrder {
  return {
    form: 'plugmark/work-order/1',
    job: 'typed',
    technician: 'not given',
    vehicle: {},
    engine: {
      banks: [[1]],
      serviceOrder: [1],
      headMaterial: choice(headMaterialSchema.options, options.head, '--head'),
    },
    plug: {
      part: 'not given',
      thread: choice(threadSchema.options, options.thread, '--thread'),
      seat: choice(seatSchema.options, options.seat, '--seat'),
    },
    specification: {
      torque,
      gapRules: { check: 'not-permitted' },
      threads: choice(threadConditionSchema.options, options.lubrication, '--lubrication'),
      source: { kind: 'invented-example', title: w`typed at the command line` },
    },
  };
}

/** What an adapter may be off where nothing better is known: a tape measure, and an eye for angles. Assumption. */
export const TAPE = { armMm: 2, offsetMm: 1, angleDeg: 5 };

function adapterFrom({ arm, offset, angle }: WindowOptions): Adapter | undefined {
  if (arm === undefined && offset === undefined) return undefined;
  const parsed = adapterSchema.safeParse({
    armMm: arm,
    offsetMm: offset,
    angleDeg: angle ?? 0,
    within: TAPE,
  });
  if (parsed.success) return parsed.data;
  throw new ProblemError(
    problemFromZod(
      parsed.error,
      'adapter',
      'input-not-valid',
      w`Give both --arm and --offset in mm, and --angle in degrees.`,
    ),
  );
}

function universalJoint(bentDeg: number): FlexJoint {
  const parsed = flexJointSchema.safeParse({ kind: 'universal-joint', bentDeg });
  if (parsed.success) return parsed.data;
  throw new ProblemError(
    problemFromZod(parsed.error, '--bent', 'input-not-valid', w`Give the bend in degrees, for example 10.`),
  );
}

/** The wrench and the rule, of the station file or as typed. */
export async function wrenchFrom(
  options: WindowOptions,
): Promise<{ readonly wrench: Instrument; readonly decision: Decision }> {
  const station = options.station === undefined ? null : await readStationFile(options.station);
  const wrench =
    station === null
      ? typedWrench(options)
      : station.instruments.find(({ quantity }) => quantity === 'torque');
  if (wrench === undefined)
    throw new ProblemError({
      code: 'instrument-missing',
      where: options.station ?? '',
      message: w`the station has no torque wrench`,
      next: w`Add a tool with "quantity": "torque" to the station file.`,
    });
  return { wrench, decision: decisionFrom(options, station?.decision ?? USUAL_DECISION) };
}

function typedWrench({ permissible, resolution }: WindowOptions): Instrument {
  return {
    id: 'wrench',
    quantity: 'torque',
    permissibleDeviation: { kind: 'relative', percent: permissible ?? 4 },
    resolution,
    basis:
      permissible === undefined
        ? 'class limit of ISO 6789-1 above 10 N·m of capacity'
        : w`typed at the command line`,
  };
}

function decisionFrom({ rule, r, atLeast, grades }: WindowOptions, usual: Decision): Decision {
  const graded = grades ?? usual.grades;
  if (rule === undefined) return { rule: usual.rule, grades: graded };
  const more = rule === 'guard-band' ? { r } : rule === 'probability' ? { atLeast } : {};
  const parsed = decisionRuleSchema.safeParse({ kind: rule, ...more });
  if (parsed.success) return { rule: parsed.data, grades: graded };
  throw new ProblemError(
    problemFromZod(
      parsed.error,
      '--rule',
      'input-not-valid',
      w`Choose simple, guard-band, iso-14253-1 or probability.`,
    ),
  );
}

function choice<T extends string>(options: readonly T[], given: string, where: string): T {
  const found = options.find((option) => option === given);
  if (found !== undefined) return found;
  throw new ProblemError({
    code: 'input-not-valid',
    where,
    message: w`"${given}" is not one of the choices`,
    next: w`Choose one of: ${options.join(', ')}.`,
  });
}

/** The day to judge certificates by. */
export function dayOf({ on }: WindowOptions): string {
  if (on === undefined) return today();
  const day = z.iso.date().safeParse(on);
  if (day.success) return day.data;
  throw new ProblemError({
    code: 'input-not-valid',
    where: '--on',
    message: w`"${on}" is no date`,
    next: w`Write it as 2026-05-04.`,
  });
}
