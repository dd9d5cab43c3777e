/**
 * Reads the open Digital Calibration Certificate (PTB, XML with D-SI; by its elements, whatever its version) as far as a job needs it: whose
 * instrument, when, by whom, and the points. Hostile input: no document type, no entities, bounded, nothing fetched.
 */
import { DOMParser, type Document, type Element } from '@xmldom/xmldom';
import { err, type Result } from '../result.ts';
import { type Certificate, certificateFrom } from './certificate.ts';
import { type DccQuantity, quantitiesOf } from './dcc-quantity.ts';
import { all, first, textOf } from './dcc-tree.ts';
import { otherUnits } from './dcc-units.ts';

const MAX_CHARACTERS = 1 << 20;
/** No certificate of one instrument has more; keeps a hostile one from being walked without end. */
const MAX_GROUPS = 100;

/** Thrown inside this file only, so that the first fault ends the reading. */
class Unreadable extends Error {}

/** The certificate in a DCC. Problems: `dcc-unreadable` with what is missing, or those of a certificate with the field. */
export function certificateFromDcc(xml: string, file: string): Result<Certificate> {
  try {
    return certificateFrom(read(parse(xml)), file);
  } catch (error) {
    // A stack that overflows on absurd nesting is the document's fault as well.
    if (!(error instanceof Unreadable || error instanceof RangeError)) throw error;
    const message = error instanceof Unreadable ? error.message : 'it is nested too deeply';
    return err({
      code: 'dcc-unreadable',
      where: file,
      message: `not a calibration certificate that can be read: ${message}`,
      next: 'Ask the laboratory for a DCC with such points, or type the points into the JSON form.',
    });
  }
}

function parse(xml: string): Document {
  if (xml.length > MAX_CHARACTERS) throw new Unreadable('it is far too large');
  if (/<!(?:DOCTYPE|ENTITY)/i.test(xml))
    throw new Unreadable('it declares a document type, which no DCC does');
  // The parser wraps what is thrown here; the first message is the one that tells.
  let fault: string | null = null;
  const refuse = (_level: string, message: string): never => {
    fault ??= message.split('\n')[0] ?? '';
    throw new Unreadable(fault);
  };
  try {
    return new DOMParser({ onError: refuse }).parseFromString(xml, 'application/xml');
  } catch (error) {
    if (error instanceof RangeError) throw error;
    throw new Unreadable(`XML: ${fault ?? (error instanceof Error ? error.message : 'none')}`);
  }
}

function read(document: Document): unknown {
  const root = document.documentElement;
  if (root === null || root.localName !== 'digitalCalibrationCertificate')
    throw new Unreadable('its root is not digitalCalibrationCertificate');
  const core = needed(first(root, 'dcc', 'coreData'), 'coreData');
  const items = all(root, 'dcc', 'item').filter((item) => item.parentNode?.localName === 'items');
  const [item, second] = items;
  if (item === undefined || second !== undefined)
    throw new Unreadable(`it is for ${items.length} items; expected one instrument`);
  const laboratory = first(root, 'dcc', 'calibrationLaboratory');
  const { unit, points } = pointsOf(root);
  return {
    number: needed(textOf(first(core, 'dcc', 'uniqueIdentifier')), 'uniqueIdentifier'),
    laboratory: needed(laboratory && textOf(first(laboratory, 'dcc', 'content')), 'name of the laboratory'),
    serial: needed(serialOf(item), 'serial number of the item'),
    date: needed(
      textOf(first(core, 'dcc', 'endPerformanceDate')) ?? textOf(first(core, 'dcc', 'beginPerformanceDate')),
      'endPerformanceDate',
    ),
    unit,
    points,
  };
}

function serialOf(item: Element): string | null {
  const ids = all(item, 'dcc', 'identification');
  const serial =
    ids.find((id) => /serial/i.test(id.getAttribute('refType') ?? '')) ??
    ids.find((id) => textOf(first(id, 'dcc', 'issuer')) === 'manufacturer');
  return serial === undefined ? null : textOf(first(serial, 'dcc', 'value'));
}

/** The first table or group of quantities that holds a reading and what it was compared with. */
function pointsOf(root: Element): { readonly unit: DccQuantity['unit']; readonly points: unknown } {
  const results = needed(first(root, 'dcc', 'measurementResults'), 'measurementResults');
  const groups = [...all(results, 'dcc', 'list'), ...all(results, 'dcc', 'data')].slice(0, MAX_GROUPS);
  for (const group of groups) {
    const quantities = quantitiesOf(group);
    if (!quantities.ok) throw new Unreadable(quantities.error);
    const { reading, error, reference } = quantities.value;
    const readings = reading ?? sum(reference, error);
    const errors = error ?? difference(reading, reference);
    if (readings === null || errors === null) continue;
    const uncertainty = error?.uncertainty ?? reading?.uncertainty ?? reference?.uncertainty ?? null;
    if (uncertainty === null) throw new Unreadable('its points carry no expanded uncertainty');
    if (errors.values.length !== readings.values.length || uncertainty.length !== readings.values.length)
      throw new Unreadable('its lists differ in length');
    return {
      unit: readings.unit,
      points: readings.values.map((value, i) => ({
        reading: value,
        error: errors.values[i],
        ...uncertainty[i],
      })),
    };
  }
  const others = otherUnits(groups);
  if (others !== null) throw new Unreadable(`its points are ${others}, not newton metres or millimetres`);
  throw new Unreadable('no result holds readings (basic_measuredValue) with errors or reference values');
}

type Values = Pick<DccQuantity, 'unit' | 'values'>;

function sum(a: Values | null, b: Values | null): Values | null {
  return joined(a, b, (x, y) => x + y);
}

function difference(a: Values | null, b: Values | null): Values | null {
  return joined(a, b, (x, y) => x - y);
}

function joined(
  a: Values | null,
  b: Values | null,
  combine: (x: number, y: number) => number,
): Values | null {
  if (a === null || b === null) return null;
  if (a.unit !== b.unit || a.values.length !== b.values.length)
    throw new Unreadable('readings and reference values do not go together');
  // Twelve figures are more than any laboratory prints; the rest is noise of binary subtraction.
  return {
    unit: a.unit,
    values: a.values.map((x, i) => Number(combine(x, b.values[i] ?? Number.NaN).toPrecision(12))),
  };
}

function needed<T>(value: T | null | undefined, what: string): T {
  if (value === null || value === undefined || value === '') throw new Unreadable(`${what} is missing`);
  return value;
}
