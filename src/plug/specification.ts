import { z } from 'zod';
import { personal } from '../personal.ts';
import { w } from '../words/catalogue.ts';

/** A figure or a range as printed in the source, parsed by src/quantity; kept as text so that the record shows what was read. */
const printed = z.string().min(1).max(80);

const printedTorque = z
  .string({
    error: ({ input }) =>
      input === undefined
        ? w`there is no torque. Give it as printed; where the source prints an angle alone, give that angle in its place`
        : undefined,
  })
  .min(1)
  .max(80);
const name = z.string().min(1).max(80);

export const threadConditionSchema = z.enum(['dry', 'oiled', 'anti-seize', 'factory-coated']);

const sourceSchema = z.strictObject({
  kind: z
    .enum(['engine-maker', 'plug-box', 'general-table', 'invented-example'])
    .describe('Who published it. The engine maker goes before the plug box, the box before a general table.'),
  title: z.string().min(1).max(200).describe('Title of the document.'),
  edition: z.string().max(80).exactOptional().describe('Its edition.'),
  date: z.iso.date().exactOptional().describe('Its date.'),
});
export type Source = z.infer<typeof sourceSchema>;

export const gapCheckSchema = z.enum(['gauge', 'wire', 'visual-only', 'not-permitted']);

/** How the gap may be found and changed; a plug box or service information says so. */
const gapRulesSchema = z.strictObject({
  check: gapCheckSchema
    .exactOptional()
    .describe(
      'How the gap may be checked: an electronic `gauge` (unless given), go/no-go by `wire`, or no figure at all.',
    ),
  wires: z
    .strictObject({
      go: printed.describe('The wire that must pass, `"0.72 mm"`.'),
      noGo: printed.describe('The wire that must not pass, `"0.78 mm"`.'),
      within: printed.describe('How far a wire may be off, `"0.003 mm"`.'),
    })
    .exactOptional()
    .describe('For `wire`: a plug is right when `go` passes and `noGo` does not.'),
  serviceLimit: printed.exactOptional().describe('The widest gap at which a used plug may go on.'),
  adjustable: z
    .enum(['yes', 'new-only', 'no'])
    .exactOptional()
    .describe('Whether the gap may be set; `new-only`: on new plugs alone.'),
  bendMost: printed
    .exactOptional()
    .describe('How far the ground electrode may be bent in all; 0.2 mm unless given.'),
});

/** What other sources say of the same plug in the same engine; it is set aside, and shown. */
const otherSourceSchema = z.strictObject({
  torque: printed.describe('The torque as that source prints it.'),
  threads: threadConditionSchema.describe('The condition of the threads that it assumes.'),
  source: sourceSchema.describe('The source.'),
});

/** What a shop makes of a single figure, `23 Nm`: its own rule, and never the maker's. */
export const singleFigureSchema = z
  .strictObject({
    percent: z
      .number()
      .positive()
      .max(25)
      .describe('By how much a reading may differ from the figure, either way.'),
    setBy: personal('person', name.describe('Who set the rule.')),
    basis: z.string().min(1).max(200).describe('What the shop rests it on.'),
  })
  .describe(
    "The shop's own tolerance for a torque that is printed as a single figure. It is not the maker's.",
  );
export type SingleFigure = z.infer<typeof singleFigureSchema>;

export const specificationSchema = z.strictObject({
  torque: printedTorque.describe(
    `As printed: \`"25-30 N·m"\`, \`"18 Nm ±10 %"\`, \`"15-22 lbf·ft"\`. Of a printed pair the first unit, which is the source's own. Or an angle in its place, \`"1/2-2/3 turn"\`: from contact, judged with a wrench that sends its angle, else recorded as done by hand.`,
  ),
  tightenFirst: printed
    .exactOptional()
    .describe('For two steps: tighten to this, loosen, then tighten to `torque`.'),
  angle: printed.exactOptional().describe('Angle advised from contact, `"1/2-2/3 turn"`. Shown, not judged.'),
  turn: printed
    .exactOptional()
    .describe(
      'For tightening by torque and angle: the turn from contact, `"180-240°"`, which is judged beside the torque. Only a wrench that sends its angle can prove it.',
    ),
  gap: printed
    .exactOptional()
    .describe('As printed: `"0.7-0.8 mm"`, `"0.028-0.031 in"`. Left out only where the gap is not measured.'),
  gapRules: gapRulesSchema.exactOptional().describe('How the gap may be checked and set.'),
  threads: threadConditionSchema.describe('The condition of the threads that the torque figure assumes.'),
  reduction: z
    .strictObject({
      percent: z.number().positive().max(50).describe('By how much the torque is reduced.'),
      lubricant: z.enum(['oiled', 'anti-seize']).describe('What is on the threads.'),
      setBy: personal('person', name.describe('Who set the rule.')),
    })
    .exactOptional()
    .describe(
      "The shop's own rule for lubricated threads. Refused where the figure assumes lubricated threads already.",
    ),
  change: z
    .strictObject({
      km: z.int().positive().max(1_000_000).exactOptional().describe('After so many kilometres.'),
      months: z.int().positive().max(240).exactOptional().describe('After so many months.'),
    })
    .refine(({ km, months }) => km !== undefined || months !== undefined, {
      error: () => w`expected km or months`,
    })
    .exactOptional()
    .describe('When the source has the plugs changed again, whichever comes first. Printed, not judged.'),
  singleFigure: singleFigureSchema.exactOptional(),
  source: sourceSchema.describe('Where the figures come from.'),
  also: z
    .array(otherSourceSchema)
    .max(5)
    .exactOptional()
    .describe('What other sources say. An order that works to the worse source is refused.'),
  checkedBy: personal(
    'person',
    name.describe(
      'Who looked again at an unusual figure. Without it such a figure is refused; one that cannot be is refused with it.',
    ),
  ).exactOptional(),
});
export type Specification = z.infer<typeof specificationSchema>;

/** The figures alone: the same ones are the same, whoever checked them or set the rule, and if that is withheld. */
export function withoutNames({ checkedBy, reduction, singleFigure, ...figures }: Specification) {
  return {
    ...figures,
    ...(reduction === undefined ? {} : { reduction: withoutSetter(reduction) }),
    ...(singleFigure === undefined ? {} : { singleFigure: withoutSetter(singleFigure) }),
  };
}

const withoutSetter = <T extends { readonly setBy: unknown }>({ setBy: _setBy, ...rule }: T) => rule;

export const threadSchema = z.enum(['M8x1', 'M10x1', 'M12x1.25', 'M14x1.25', 'M18x1.5']);
export const seatSchema = z.enum(['gasket', 'conical']);
export const headMaterialSchema = z.enum(['aluminium', 'cast-iron']);

export const plugSchema = z.strictObject({
  part: z.string().min(1).max(60).describe('Part number.'),
  alsoParts: z
    .array(z.string().min(1).max(60))
    .max(4)
    .exactOptional()
    .describe('Other parts that the specification allows for some of the cylinders.'),
  parts: z
    .array(
      z.strictObject({
        part: z.string().min(1).max(60).describe('The part: `part`, or one of `alsoParts`.'),
        cylinders: z.array(z.int().min(1).max(24)).min(1).describe('Its cylinders.'),
      }),
    )
    .min(2)
    .max(5)
    .exactOptional()
    .describe(
      'Where an engine has two different plugs: which part goes into which cylinder; every cylinder once.',
    ),
  thread: threadSchema.describe('Thread.'),
  seat: seatSchema.describe('Seat: with a gasket, or conical.'),
  reachMm: z.number().positive().max(60).exactOptional().describe('Length of the thread.'),
  hexMm: z.number().positive().max(40).exactOptional().describe('Width across the flats.'),
  heatRange: z.string().min(1).max(20).exactOptional().describe('Heat range, as the plug maker writes it.'),
  resistor: z.boolean().exactOptional().describe('Whether it has a resistor.'),
  gasket: z.enum(['new', 'used']).exactOptional().describe('Condition of the gasket.'),
  condition: z
    .enum(['new', 'used'])
    .exactOptional()
    .describe('Condition of the plug; new unless given. A used plug goes back into its own cylinder.'),
  tip: z
    .enum(['nickel', 'platinum', 'iridium', 'other-precious'])
    .exactOptional()
    .describe('Material of the tip. Precious tips are not adjusted unless the specification says so.'),
  groundElectrodes: z.int().min(1).max(4).exactOptional().describe('How many ground electrodes.'),
});
export type Plug = z.infer<typeof plugSchema>;

/** What general tables go by. */
export interface Fit {
  readonly thread: z.infer<typeof threadSchema>;
  readonly seat: z.infer<typeof seatSchema>;
  readonly head: z.infer<typeof headMaterialSchema>;
}
