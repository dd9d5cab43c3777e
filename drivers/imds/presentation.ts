import type { Problem } from '../../src/problem.ts';
import type { Result } from '../../src/result.ts';
import { decode, encode } from '../bluetooth/layout.ts';
import { FORMAT_NAMES, type QuantityFormat } from './numbers.ts';

/** Characteristic Presentation Format; codes as in the Assigned Numbers, value = raw · 10^exponent of the unit. */
export interface PresentationFormat {
  readonly formatCode: number;
  readonly exponent: number;
  readonly unitCode: number;
  readonly description: number;
}

const WHAT = 'Presentation Format 0x2904';
const NAMESPACE_SIG = 0x01;

const reserved = (code: number) => `expected a known format code, found the reserved ${hex(code, 2)}`;

/** 7 bytes: format, exponent, unit, name space, description. The name space must be the SIG's. */
export function decodePresentation(bytes: Uint8Array): Result<PresentationFormat, Problem> {
  return decode(WHAT, bytes, (cursor) => {
    const formatCode = cursor.uint(1, 'the format');
    if (!FORMAT_NAMES.has(formatCode)) cursor.fail(0, reserved(formatCode));
    const exponent = cursor.int(1, 'the exponent');
    const unitCode = cursor.uint(2, 'the unit');
    const namespace = cursor.uint(1, 'the name space');
    if (namespace !== NAMESPACE_SIG) {
      cursor.fail(4, `expected name space 0x01 (Bluetooth SIG), found ${hex(namespace, 2)}`);
    }
    return { formatCode, exponent, unitCode, description: cursor.uint(2, 'the description') };
  });
}

export function encodePresentation(format: PresentationFormat): Result<Uint8Array, Problem> {
  return encode(WHAT, (writer) => {
    if (!FORMAT_NAMES.has(format.formatCode)) writer.fail(reserved(format.formatCode));
    writer.uint(format.formatCode, 1, 'the format');
    writer.int(format.exponent, 1, 'the exponent');
    writer.uint(format.unitCode, 2, 'the unit');
    writer.uint(NAMESPACE_SIG, 1, 'the name space');
    writer.uint(format.description, 2, 'the description');
  });
}

/**
 * The problem when a device presents its characteristic in another way than the Bluetooth SIG defines it.
 * One of the two is wrong, and a factor of ten in a torque is not a thing to guess about.
 */
export function contradiction(actual: PresentationFormat, defined: QuantityFormat): Problem | undefined {
  const faults = [
    {
      field: 'format',
      byte: 0,
      found: formatName(actual.formatCode),
      defined: formatName(defined.formatCode),
    },
    { field: 'exponent', byte: 1, found: String(actual.exponent), defined: String(defined.exponent) },
    { field: 'unit', byte: 2, found: hex(actual.unitCode, 4), defined: hex(defined.unitCode, 4) },
  ].filter((part) => part.found !== part.defined);
  const [first] = faults;
  if (first === undefined) return undefined;
  const list = faults
    .map((part) => `${part.field} ${part.found} where ${part.defined} is defined`)
    .join(', ');
  return {
    code: 'imds-format-contradiction',
    where: `${WHAT} byte ${first.byte}`,
    message: `the tool presents ${defined.name} with ${list}; its readings cannot be trusted`,
    next: 'Do not use this tool for the job; ask its maker for corrected firmware.',
  };
}

function formatName(code: number): string {
  return FORMAT_NAMES.get(code) ?? hex(code, 2);
}

function hex(value: number, digits: number): string {
  return `0x${value.toString(16).toUpperCase().padStart(digits, '0')}`;
}
