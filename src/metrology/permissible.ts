import { z } from 'zod';

/** How far an instrument may be off: a share of the reading (torque) or a fixed amount in N·m or mm. */
export const permissibleDeviationSchema = z.discriminatedUnion('kind', [
  z
    .strictObject({
      kind: z.literal('relative'),
      percent: z.number().positive().max(50).describe('Share of the reading, in per cent.'),
    })
    .describe('A share of the reading.'),
  z
    .strictObject({
      kind: z.literal('absolute'),
      amount: z.number().positive().describe('The same everywhere, in N·m or mm.'),
    })
    .describe('A fixed amount.'),
]);
export type PermissibleDeviation = z.infer<typeof permissibleDeviationSchema>;

/** Half-width of a permissible deviation at a reading, in the unit of the reading. */
export function permissibleAt(permissible: PermissibleDeviation, value: number): number {
  return permissible.kind === 'relative' ? (permissible.percent / 100) * Math.abs(value) : permissible.amount;
}
