import { z } from 'zod';
import { w } from '../../src/words/catalogue.ts';

/** What simulated tools do, as data: "plugmark manual simulator" is about it. */

const tool = z.string().min(1).max(32).describe('The tool, by its id.');
/** As the simulated hands understand it; see sim/technician/scripted.ts. */
const MOVE =
  /^(?:(?:measure|fit|replace) \d{1,2}|bend \d{1,2} -?\d?\.?\d{1,3}|pull \d{1,2}(?: (?:careful|hurried|short|lean))?|loosen \d{1,2}(?: (?:ratchet|wrench))?|knock \d{1,3})$/;
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
      do: z.literal('hands'),
      move: z
        .string()
        .regex(MOVE, { error: () => w`expected a move such as "pull 1 hurried"` })
        .describe(
          'As of "plugmark demo --moves": `measure 1`, `bend 1 0.05` in mm, `fit 1`, `pull 1 careful` (or `hurried`, `short`, `lean`), `loosen 1 wrench` (or `ratchet`), `replace 1`, `knock 5` in N·m.',
        ),
    })
    .describe('The simulated technician does this at the simulated engine; its wrench and gauge feel it.'),
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
    .describe('A fault: its port is gone, or its link breaks; it comes back.'),
]);
export type ScenarioStep = z.infer<typeof stepSchema>;

/** Of a device in the air, which has no other name than this. */
const address = z.string().regex(/^[0-9a-fA-F]{2}(:[0-9a-fA-F]{2}){5}$/, {
  error: () => w`expected an address such as c2:00:00:00:00:01`,
});

const path = z.string().min(1).max(100);

/** An invented engine with its plugs, as the simulated hands feel it. */
const engineSchema = z.strictObject({
  wrench: tool.exactOptional().describe('The tool that is pulled.'),
  gauge: tool.exactOptional().describe('The tool that measures gaps.'),
  cylinders: z.int().min(1).max(16).describe('How many.'),
  lowerNm: z.number().min(5).max(100).describe('Lower limit of the torque.'),
  upperNm: z.number().min(5).max(100).describe('Upper limit; the wrench clicks in the middle.'),
  gapLowerMm: z.number().min(0.1).max(3).default(0.7).describe('Lower limit of the gap; 0.7 unless given.'),
  gapUpperMm: z.number().min(0.1).max(3).default(0.8).describe('Upper limit; 0.8 unless given.'),
});

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
          port: path
            .exactOptional()
            .describe('Of a tool on a serial port: the name that its pseudo-terminal gets.'),
          address: address.exactOptional().describe('Of a Bluetooth tool: its address.'),
          serial: z
            .string()
            .min(1)
            .max(64)
            .exactOptional()
            .describe('Of a Bluetooth tool: its serial number; its id unless given.'),
          noiseNm: z.number().min(0).max(1).default(0.01).describe('Noise of a wrench; 0.01 unless given.'),
        }),
      )
      .min(1)
      .max(8)
      .describe('The tools.'),
    air: path
      .exactOptional()
      .describe('Where Bluetooth tools are reached: a Unix socket, to be named in `PLUGMARK_AIR`.'),
    engine: engineSchema
      .exactOptional()
      .describe('What the simulated technician works at; only with steps `hands`.'),
    steps: z.array(stepSchema).min(1).max(1_000).describe('What happens, one after the other.'),
    times: z.int().min(1).max(10_000).default(1).describe('How often all of it; once unless given.'),
  })
  .superRefine(({ tools, steps, air, engine }, ctx) => {
    const ids = tools.map(({ id }) => id);
    for (const [i, id] of ids.entries())
      if (ids.indexOf(id) < i)
        ctx.addIssue({ code: 'custom', path: ['tools', i, 'id'], message: w`"${id}" appears twice` });
    for (const way of ['port', 'address'] as const) {
      const ways = tools.map((one) => one[way]?.toLowerCase());
      for (const [i, one] of ways.entries())
        if (one !== undefined && ways.indexOf(one) < i)
          ctx.addIssue({ code: 'custom', path: ['tools', i, way], message: w`"${one}" appears twice` });
    }
    for (const [i, { port, address }] of tools.entries()) {
      const message = w`expected either "port" or "address"`;
      if ((port === undefined) === (address === undefined))
        ctx.addIssue({ code: 'custom', path: ['tools', i], message });
    }
    if (air === undefined && tools.some(({ address }) => address !== undefined))
      ctx.addIssue({ code: 'custom', path: ['air'], message: w`expected it where a tool has an address` });
    for (const of of ['wrench', 'gauge'] as const) {
      const named = engine?.[of];
      if (named !== undefined && !ids.includes(named))
        ctx.addIssue({ code: 'custom', path: ['engine', of], message: w`there is no tool "${named}"` });
    }
    if (engine !== undefined && engine.lowerNm > engine.upperNm)
      ctx.addIssue({
        code: 'custom',
        path: ['engine', 'upperNm'],
        message: w`expected it above the lower limit`,
      });
    if (engine !== undefined)
      for (const [i, message] of impossible(steps, engine.cylinders))
        ctx.addIssue({ code: 'custom', path: ['steps', i, 'move'], message });
    for (const [i, step] of steps.entries()) {
      if (step.do === 'hands' && engine === undefined)
        ctx.addIssue({ code: 'custom', path: ['steps', i], message: w`expected an "engine" to work at` });
      if ('tool' in step && !ids.includes(step.tool))
        ctx.addIssue({
          code: 'custom',
          path: ['steps', i, 'tool'],
          message: w`there is no tool "${step.tool}"`,
        });
    }
  });

/** Moves that no hands could make. All plugs are out when it begins. */
function* impossible(steps: readonly ScenarioStep[], cylinders: number): Iterable<readonly [number, string]> {
  const fitted = new Set<number>();
  for (const [i, step] of steps.entries()) {
    if (step.do !== 'hands' || !MOVE.test(step.move)) continue;
    const [verb = '', number = ''] = step.move.split(' ');
    if (verb === 'knock') continue;
    const cylinder = Number(number);
    if (cylinder < 1 || cylinder > cylinders) yield [i, w`there is no cylinder ${cylinder}`];
    else if ((verb === 'pull' || verb === 'loosen') && !fitted.has(cylinder))
      yield [i, w`the plug of cylinder ${cylinder} is not in the head: "fit ${cylinder}" first`];
    if (verb === 'fit') fitted.add(cylinder);
    if (verb === 'loosen' || verb === 'replace') fitted.delete(cylinder);
  }
}

export type Scenario = z.infer<typeof scenarioSchema>;
