/** All that is frozen with a job and that many jobs share: judging an attempt again needs it, and the job's own day. */
import { z } from 'zod';
import { canonicalBytes } from '../evidence/canonical.ts';
import { toHex } from '../evidence/platform/bytes.ts';
import { sha256 } from '../evidence/platform/hash.ts';
import { instrumentSchema } from '../instrument/instrument.ts';
import { decisionSchema } from '../job/basis.ts';
import type { JobState } from '../job/state.ts';
import { windowSchema } from '../metrology/judgement.ts';
import { adapterSchema, flexJointSchema } from '../plug/geometry.ts';
import { headMaterialSchema, plugSchema, specificationSchema, withoutNames } from '../plug/specification.ts';

export const setupSchema = z.strictObject({
  /** As the orders describe it. */
  engine: z.string().nullable(),
  headMaterial: headMaterialSchema,
  plug: plugSchema,
  specification: specificationSchema,
  adapter: adapterSchema.nullable(),
  flexJoint: flexJointSchema.exactOptional(),
  /** Those that the job measures with, with their certificates and with what a device declared of itself. */
  instruments: z.array(instrumentSchema),
  decision: decisionSchema,
  torqueWindow: windowSchema,
  firstTorqueWindow: windowSchema.nullable(),
  gapWindow: windowSchema.nullable(),
});
export type Setup = z.infer<typeof setupSchema>;

/** Its windows are those of the first wrench and the first gauge; those of others have the same limits. */
export function setupOf(state: JobState): Setup {
  const { order, instruments, basis, windows } = state;
  const first = (quantity: 'torque' | 'length') =>
    windows[instruments.find((one) => one.quantity === quantity)?.id ?? ''];
  const { window: torqueWindow = state.torqueWindow, firstWindow = basis.firstTorqueWindow } =
    first('torque') ?? {};
  const gapWindow = first('length')?.window ?? state.gapWindow;
  return {
    engine: order.engine.description ?? null,
    headMaterial: order.engine.headMaterial,
    plug: order.plug,
    specification: order.specification,
    adapter: order.adapter ?? null,
    ...(order.flexJoint === undefined ? {} : { flexJoint: order.flexJoint }),
    instruments: instruments.filter(({ quantity }) => quantity === 'torque' || gapWindow !== null),
    decision: basis.decision,
    torqueWindow,
    firstTorqueWindow: firstWindow,
    gapWindow,
  };
}

/** The same for the same engine, thread, seat and specification: 16 hexadecimal digits. */
export function specificationKey({ engine, headMaterial, plug, specification }: Setup): string {
  const { thread, seat } = plug;
  return digest({ engine, headMaterial, thread, seat, specification: withoutNames(specification) });
}

export const setupKey = (setup: Setup): string =>
  digest({ ...setup, specification: withoutNames(setup.specification) });

const digest = (value: unknown) => toHex(sha256(canonicalBytes(value))).slice(0, 16);
