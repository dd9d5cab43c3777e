/**
 * The result of a pull or a gap reading in the names of OPC 40450-1 (joining systems, base model) and OPC 40001-101
 * (ResultEvaluation), written as JSON in the manner of OPC 10000-6: enumerations as numbers, 64-bit integers as text.
 * Members whose numbers in the standard were not at hand (ViolationType, OperationMode, AssemblyType, InterventionType,
 * CounterType) are left out and never guessed.
 */
import { z } from 'zod';

/** ResultEvaluationEnum. */
export const EVALUATION = { OK: 1, NotOK: 2, NotDecidable: 3 } as const;
/** Classification. */
export const SINGLE_RESULT = 1;
export const JOB_RESULT = 4;
/** EntityType of a tool. */
export const ASSET = 2;
/** ValueTag of the value that is judged. */
export const FINAL = 1;
/** FailureReason: limits of the program. */
export const PROGRAM_LIMITS = 1;
/** PhysicalQuantity. */
export const QUANTITY = { time: 1, torque: 2, angle: 3, distance: 5 } as const;

const NAMESPACE = 'http://www.opcfoundation.org/UA/units/un/cefact';

/** EUInformation of the units that are written, from the list of UNECE codes of OPC UA. */
export const UNITS = {
  'N.m': { UnitId: 20_053, NamespaceUri: NAMESPACE, DisplayName: { Text: 'N·m' } },
  deg: { UnitId: 17_476, NamespaceUri: NAMESPACE, DisplayName: { Text: '°' } },
  mm: { UnitId: 5_066_068, NamespaceUri: NAMESPACE, DisplayName: { Text: 'mm' } },
  ms: { UnitId: 4_403_766, NamespaceUri: NAMESPACE, DisplayName: { Text: 'ms' } },
} as const;

const time = z.iso.datetime();
const evaluation = z
  .literal([0, 1, 2, 3])
  .describe('0 undefined, 1 OK, 2 not OK, 3 not decidable because of the measurement uncertainty.');
const quantity = z.literal([1, 2, 3, 5]).describe('1 time, 2 torque, 3 angle, 5 distance.');
const unit = z
  .strictObject({
    NamespaceUri: z.literal(NAMESPACE),
    UnitId: z.int().describe('The UNECE code as a number.'),
    DisplayName: z.strictObject({ Text: z.string().describe('As people write it.') }).describe('Its name.'),
  })
  .describe('EUInformation of the unit.');

const value = z.strictObject({
  MeasuredValue: z.number().describe('The figure.'),
  Name: z.string().describe('What it is.'),
  ResultEvaluation: evaluation.exactOptional(),
  ValueTag: z.literal(FINAL).exactOptional().describe('1: the figure that is judged.'),
  SensorId: z.string().exactOptional().describe('The tool, by its id in the station file.'),
  LowLimit: z
    .number()
    .exactOptional()
    .describe('Lower limit; `limitsFrom` under `ExtendedMetaData` says whose.'),
  HighLimit: z.number().exactOptional().describe('Upper limit.'),
  PhysicalQuantity: quantity,
  EngineeringUnits: unit,
});
export type ResultValue = z.infer<typeof value>;

const traceContent = z.strictObject({
  Values: z.array(z.number()).describe('As many as the curve has points.'),
  Name: z.string().describe('`time` or `torque`.'),
  SensorId: z.string().exactOptional().describe('The tool, by its id in the station file.'),
  PhysicalQuantity: quantity,
  EngineeringUnits: unit,
});

const stepTrace = z.strictObject({
  StepTraceId: z.string().describe('Its own id.'),
  StepResultId: z.string().describe('The id of the result.'),
  NumberOfTracePoints: z.int().min(1).describe('How many points the curve has.'),
  StepTraceContent: z
    .array(traceContent)
    .describe('Time in ms from the start of the pull, torque in N·m at the tool, zero taken off.'),
});

const content = z.strictObject({
  OverallResultValues: z.array(value).describe('Empty where nothing was measured.'),
  FailureReason: z.literal(PROGRAM_LIMITS).exactOptional().describe('1: beyond the limits.'),
  Trace: z
    .strictObject({
      TraceId: z.string().describe('Its own id.'),
      ResultId: z.string().describe('The id of the result.'),
      StepTraces: z.array(stepTrace).describe('One.'),
    })
    .exactOptional()
    .describe('The torque curve; only in what "plugmark results" writes.'),
});

const entity = z.strictObject({
  Name: z.string().describe('The tool, by its id in the station file.'),
  EntityId: z.string().describe('Serial number of the tool, or its id where it has none.'),
  EntityType: z.literal(ASSET).describe('2: an asset.'),
});

const metaData = z
  .strictObject({
    ResultId: z
      .string()
      .describe('Job and number of the pull or reading. A later result of the same id replaces it.'),
    SequenceNumber: z.string().regex(/^\d+$/).exactOptional().describe('Number of the pull within the job.'),
    Name: z.string().describe('What was measured, in words.'),
    Classification: z.literal([SINGLE_RESULT, JOB_RESULT]).describe('1 one result, 4 a job.'),
    JobId: z.string().describe('Number of the job.'),
    IsSimulated: z.boolean().describe('The figure was simulated: it proves nothing.'),
    IsGeneratedOffline: z
      .boolean()
      .exactOptional()
      .describe('The figure comes from a recording: it proves nothing.'),
    CreationTime: time.describe('When it was placed.'),
    ResultEvaluation: evaluation,
    AssociatedEntities: z.array(entity).exactOptional().describe('The tool.'),
    ExtendedMetaData: z
      .array(
        z.strictObject({
          Key: z.string().describe('Its name.'),
          Value: z
            .union([
              z.string().describe('A word.'),
              z.number().describe('A figure.'),
              z.boolean().describe('Yes or no.'),
            ])
            .describe('What it is.'),
        }),
      )
      .describe(
        'What the standard has no member for: `cylinder`, `kind` of the pull, `source` of the figure, `expandedUncertainty` (U), `conformanceProbability`, `side`, `counts` (false: taken back, or the plug was started again), `outcome` of a job.',
      ),
  })
  .describe('What the result is about.');

export const joiningResultSchema = z.strictObject({
  ResultMetaData: metaData,
  ResultContent: z.array(content).describe('One; of a job none.'),
});
export type JoiningResult = z.infer<typeof joiningResultSchema>;
