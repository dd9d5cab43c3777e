import { z } from 'zod';

/** A figure or a range as printed in the source, parsed by src/quantity; kept as text so that the record shows what was read. */
const printed = z.string().min(1).max(80);
const name = z.string().min(1).max(80);

export const threadConditionSchema = z.enum(['dry', 'oiled', 'anti-seize', 'factory-coated']);

const sourceSchema = z.strictObject({
  kind: z.enum(['engine-maker', 'plug-box', 'general-table', 'invented-example']),
  title: z.string().min(1).max(200),
  edition: z.string().max(80).exactOptional(),
  date: z.iso.date().exactOptional(),
});
export type Source = z.infer<typeof sourceSchema>;

/** How the gap may be found and changed; a plug box or service information says so. */
const gapRulesSchema = z.strictObject({
  /** `gauge` (as when nothing is said): an electronic reading. `wire`: go/no-go. The rest leave no figure. */
  check: z.enum(['gauge', 'wire', 'visual-only', 'not-permitted']).exactOptional(),
  /** The two round wires: a plug is right when `go` passes and `noGo` does not. `within`: how far a wire may be off. */
  wires: z.strictObject({ go: printed, noGo: printed, within: printed }).exactOptional(),
  /** Widest gap at which a used plug may go on. */
  serviceLimit: printed.exactOptional(),
  adjustable: z.enum(['yes', 'new-only', 'no']).exactOptional(),
  /** How far the ground electrode may be bent in all. */
  bendMost: printed.exactOptional(),
});

/** What other sources say of the same plug in the same engine; it is set aside, and shown. */
const otherSourceSchema = z.strictObject({
  torque: printed,
  threads: threadConditionSchema,
  source: sourceSchema,
});

export const specificationSchema = z.strictObject({
  /** `25-30 N·m`, `18 Nm ±10 %`, `15-22 lbf·ft`; or an angle, `1/2-2/3 turn`, which no torque wrench can prove. */
  torque: printed,
  /** Two-step: tighten to this, loosen, then tighten to `torque`. */
  tightenFirst: printed.exactOptional(),
  /** Angle advised from first contact of the seat; shown, not judged. */
  angle: printed.exactOptional(),
  /** `0.7-0.8 mm`, `0.028-0.031 in`; left out only where the gap is not to be measured. */
  gap: printed.exactOptional(),
  gapRules: gapRulesSchema.exactOptional(),
  /** The condition of the threads that the torque figure assumes. */
  threads: threadConditionSchema,
  /** The shop's own rule for lubricated threads; on the record with who set it. */
  reduction: z
    .strictObject({
      percent: z.number().positive().max(50),
      lubricant: z.enum(['oiled', 'anti-seize']),
      setBy: name,
    })
    .exactOptional(),
  source: sourceSchema,
  also: z.array(otherSourceSchema).max(5).exactOptional(),
  /** Who looked again at a figure that general tables call far off. */
  checkedBy: name.exactOptional(),
});
export type Specification = z.infer<typeof specificationSchema>;

export const threadSchema = z.enum(['M8x1', 'M10x1', 'M12x1.25', 'M14x1.25', 'M18x1.5']);
export const seatSchema = z.enum(['gasket', 'conical']);
export const headMaterialSchema = z.enum(['aluminium', 'cast-iron']);

export const plugSchema = z.strictObject({
  part: z.string().min(1).max(60),
  /** Other parts that the specification allows in the same engine, for some of its cylinders. */
  alsoParts: z.array(z.string().min(1).max(60)).max(4).exactOptional(),
  thread: threadSchema,
  seat: seatSchema,
  reachMm: z.number().positive().max(60).exactOptional(),
  hexMm: z.number().positive().max(40).exactOptional(),
  heatRange: z.string().min(1).max(20).exactOptional(),
  resistor: z.boolean().exactOptional(),
  gasket: z.enum(['new', 'used']).exactOptional(),
  /** A used plug goes back into its own cylinder; new unless told. */
  condition: z.enum(['new', 'used']).exactOptional(),
  tip: z.enum(['nickel', 'platinum', 'iridium', 'other-precious']).exactOptional(),
  groundElectrodes: z.int().min(1).max(4).exactOptional(),
});
export type Plug = z.infer<typeof plugSchema>;

/** What general tables go by. */
export interface Fit {
  readonly thread: z.infer<typeof threadSchema>;
  readonly seat: z.infer<typeof seatSchema>;
  readonly head: z.infer<typeof headMaterialSchema>;
}
