import { z } from 'zod';

/** What simulated tools do, as data: "plugmark manual simulator" is about it. */

const tool = z.string().min(1).max(32).describe('The tool, by its id.');
const ms = z.number().min(1).max(600_000);

const stepSchema = z.discriminatedUnion('do', [
  z.strictObject({ do: z.literal('wait'), ms: ms.describe('How long.') }).describe('Nothing happens.'),
  z
    .strictObject({
      do: z.literal('pull'),
      tool,
      peakNm: z.number().min(-500).max(500).describe('The torque at the top; below zero loosens.'),
      riseMs: ms.default(700).describe('From nothing to the top; 700 unless given.'),
      clicks: z
        .boolean()
        .default(true)
        .describe('Whether the wrench releases at the top; `true` unless given.'),
      turnDeg: z
        .number()
        .min(0)
        .max(3600)
        .default(60)
        .describe('How far it is turned, where it sends an angle; 60 unless given.'),
    })
    .describe('A pull of a wrench.'),
  z
    .strictObject({ do: z.literal('measure'), tool, gapMm: z.number().min(0).max(10).describe('The gap.') })
    .describe('A gauge shows this gap from here on, and sends it once where it is not asked.'),
  z.strictObject({ do: z.literal('no-value'), tool }).describe('The tool sends that it has no value, once.'),
  z
    .strictObject({
      do: z.literal('bytes'),
      tool,
      hex: z
        .string()
        .regex(/^([0-9a-fA-F]{2}){1,512}$/)
        .describe('The bytes, in hexadecimal digits.'),
    })
    .describe('A fault: bytes that the tool should not send.'),
  z
    .strictObject({ do: z.literal('silence'), tool, ms: ms.describe('How long.') })
    .describe('A fault: the tool sends nothing for a while.'),
  z
    .strictObject({ do: z.literal('unplug'), tool, ms: ms.describe('How long.') })
    .describe('A fault: its port is gone, and comes back.'),
]);
export type ScenarioStep = z.infer<typeof stepSchema>;

export const scenarioSchema = z
  .strictObject({
    form: z.literal('plugmark/scenario/1'),
    title: z.string().min(1).max(80).describe('A name for people.'),
    seed: z.int().min(0).default(1).describe('Of the noise; 1 unless given.'),
    tools: z
      .array(
        z.strictObject({
          id: z.string().min(1).max(32).describe('A name within the scenario.'),
          profile: z.string().min(1).max(400).describe('The file of its profile, seen from the scenario.'),
          port: z.string().min(1).max(400).describe('The name that its pseudo-terminal gets.'),
          noiseNm: z.number().min(0).max(1).default(0.01).describe('Noise of a wrench; 0.01 unless given.'),
        }),
      )
      .min(1)
      .max(8)
      .describe('The tools.'),
    steps: z.array(stepSchema).min(1).max(1_000).describe('What happens, one after the other.'),
    times: z.int().min(1).max(10_000).default(1).describe('How often all of it; once unless given.'),
  })
  .superRefine(({ tools, steps }, ctx) => {
    const ids = tools.map(({ id }) => id);
    for (const [i, id] of ids.entries())
      if (ids.indexOf(id) < i)
        ctx.addIssue({ code: 'custom', path: ['tools', i, 'id'], message: `"${id}" appears twice` });
    for (const [i, step] of steps.entries())
      if ('tool' in step && !ids.includes(step.tool))
        ctx.addIssue({
          code: 'custom',
          path: ['steps', i, 'tool'],
          message: `there is no tool "${step.tool}"`,
        });
  });
export type Scenario = z.infer<typeof scenarioSchema>;
