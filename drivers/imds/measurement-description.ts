import type { Problem } from '../../src/problem.ts';
import type { SamplingFunction } from '../../src/reading.ts';
import type { Result } from '../../src/result.ts';
import { type Cursor, decode, encode, type Writer } from '../bluetooth/layout.ts';
import type { QuantityFormat } from './numbers.ts';
import { type MeasuredValue, readMeasured, writeMeasured } from './value.ts';

/** What a device says of its measurement; an absent field was not sent. */
export interface MeasurementDescription {
  readonly samplingFunction?: SamplingFunction;
  /** 0 means instantaneous. */
  readonly measurementPeriodMs?: number;
  readonly updateIntervalMs?: number;
  readonly description?: number;
  readonly resolution?: MeasuredValue;
  /** Steps of 0.1 %. */
  readonly relativeUncertaintyPermille?: number;
  readonly absoluteUncertainty?: MeasuredValue;
}

const WHAT = 'Measurement Description 0x2912';
const KNOWN_FLAGS = 0b0111_1111;
const SAMPLING: readonly SamplingFunction[] = [
  'unspecified',
  'instantaneous',
  'mean',
  'rms',
  'maximum',
  'minimum',
  'moving-average',
];

/** 16 flag bits, then the fields whose bits 0 to 6 are set, in the order of the bits. */
export function decodeMeasurementDescription(
  format: QuantityFormat,
  bytes: Uint8Array,
): Result<MeasurementDescription, Problem> {
  return decode(WHAT, bytes, (cursor) => {
    const flags = cursor.uint(2, 'the flags');
    if ((flags & ~KNOWN_FLAGS) !== 0) {
      cursor.fail(0, `expected flag bits 7 to 15 to be 0, found 0x${flags.toString(16).padStart(4, '0')}`);
    }
    const has = (bit: number) => (flags & (1 << bit)) !== 0;
    return {
      ...(has(0) && { samplingFunction: readSampling(cursor) }),
      ...(has(1) && { measurementPeriodMs: cursor.uint(3, 'the measurement period') }),
      ...(has(2) && { updateIntervalMs: cursor.uint(3, 'the update interval') }),
      ...(has(3) && { description: cursor.uint(2, 'the description') }),
      ...(has(4) && { resolution: readAmount(cursor, format, 'the resolution') }),
      ...(has(5) && { relativeUncertaintyPermille: cursor.uint(1, 'the relative uncertainty') }),
      ...(has(6) && { absoluteUncertainty: readAmount(cursor, format, 'the absolute uncertainty') }),
    };
  });
}

export function encodeMeasurementDescription(
  format: QuantityFormat,
  value: MeasurementDescription,
): Result<Uint8Array, Problem> {
  return encode(WHAT, (writer) => {
    writer.uint(flagsOf(value), 2, 'the flags');
    if (value.samplingFunction !== undefined) {
      writer.uint(SAMPLING.indexOf(value.samplingFunction), 1, 'the sampling function');
    }
    if (value.measurementPeriodMs !== undefined) {
      writer.uint(value.measurementPeriodMs, 3, 'the measurement period');
    }
    if (value.updateIntervalMs !== undefined) writer.uint(value.updateIntervalMs, 3, 'the update interval');
    if (value.description !== undefined) writer.uint(value.description, 2, 'the description');
    if (value.resolution !== undefined) writeAmount(writer, format, value.resolution, 'the resolution');
    if (value.relativeUncertaintyPermille !== undefined) {
      writer.uint(value.relativeUncertaintyPermille, 1, 'the relative uncertainty');
    }
    if (value.absoluteUncertainty !== undefined) {
      writeAmount(writer, format, value.absoluteUncertainty, 'the absolute uncertainty');
    }
  });
}

/** Bit n is set when the n-th field is there. */
function flagsOf(value: MeasurementDescription): number {
  return [
    value.samplingFunction,
    value.measurementPeriodMs,
    value.updateIntervalMs,
    value.description,
    value.resolution,
    value.relativeUncertaintyPermille,
    value.absoluteUncertainty,
  ].reduce((flags: number, field, bit) => (field === undefined ? flags : flags | (1 << bit)), 0);
}

function readSampling(cursor: Cursor): SamplingFunction {
  const offset = cursor.at;
  const code = cursor.uint(1, 'the sampling function');
  return SAMPLING[code] ?? cursor.fail(offset, `expected a sampling function from 0 to 6, found ${code}`);
}

/** A step or an uncertainty: in the format of the value, but never below nothing. */
function readAmount(cursor: Cursor, format: QuantityFormat, field: string): MeasuredValue {
  const offset = cursor.at;
  const amount = readMeasured(cursor, format, field);
  if (amount.kind === 'value' && amount.counts < 0) {
    cursor.fail(offset, `expected ${field} as 0 counts or more, found ${amount.counts}`);
  }
  return amount;
}

function writeAmount(writer: Writer, format: QuantityFormat, amount: MeasuredValue, field: string): void {
  if (amount.kind === 'value' && amount.counts < 0) {
    writer.fail(`expected ${field} as 0 counts or more, got ${amount.counts}`);
  }
  writeMeasured(writer, format, amount, field);
}
