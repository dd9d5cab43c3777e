import { z } from 'zod';

/** Figures as printed in the source, parsed by src/quantity; kept as text so that the record shows what was read. */
export const specificationSchema = z.strictObject({
  /** For example `25-30 N·m`, `18 Nm ±10 %`, `15-22 lbf·ft`. */
  torque: z.string().min(1).max(80),
  /** For example `0.7-0.8 mm`, `0.028-0.031 in`. */
  gap: z.string().min(1).max(80),
  /** The condition of the threads that the torque figure assumes. */
  threads: z.enum(['dry', 'oiled', 'anti-seize', 'factory-coated']),
  source: z.strictObject({
    kind: z.enum(['engine-maker', 'plug-box', 'general-table', 'invented-example']),
    title: z.string().min(1).max(200),
    edition: z.string().max(80).exactOptional(),
    date: z.iso.date().exactOptional(),
  }),
});
export type Specification = z.infer<typeof specificationSchema>;

export const plugSchema = z.strictObject({
  part: z.string().min(1).max(60),
  thread: z.enum(['M8x1', 'M10x1', 'M12x1.25', 'M14x1.25', 'M18x1.5']),
  seat: z.enum(['gasket', 'conical']),
  reachMm: z.number().positive().max(60).exactOptional(),
  hexMm: z.number().positive().max(40).exactOptional(),
  gasket: z.enum(['new', 'used']).exactOptional(),
});
export type Plug = z.infer<typeof plugSchema>;
