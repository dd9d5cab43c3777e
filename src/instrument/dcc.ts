/**
 * Reads the open Digital Calibration Certificate (PTB, XML with D-SI; by its elements, whatever its version) as far as a job needs it: whose
 * instrument, when, by whom, and the points. Hostile input: no document type, no entities, bounded, nothing fetched.
 */
import { DOMParser, type Document, type Element } from '@xmldom/xmldom';
import { err, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';
import { type Certificate, certificateFrom } from './certificate.ts';
import { turnsBack } from './dcc-direction.ts';
import { type DccQuantity, quantitiesOf, roleOf } from './dcc-quantity.ts';
import { all, first, textOf } from './dcc-tree.ts';
import { otherUnits } from './dcc-units.ts';

const MAX_CHARACTERS = 1 << 20;
/** No certificate of one instrument has more; keeps a hostile one from being walked without end. */
const MAX_GROUPS = 100;

/** Thrown inside this file only, so that the first fault ends the reading. */
class Unreadable extends Error {}

/**
 * The certificate in a DCC; one for several items, such as a display and its sensor, is read for the item whose serial number is
 * among `serials`. Problems: `dcc-unreadable` with what is missing, or those of a certificate with the field.
 */
export function certificateFromDcc(
  xml: string,
  file: string,
  serials: readonly string[] = [],
): Result<Certificate> {
  try {
    return certificateFrom(read(parse(xml), serials), file);
  } catch (error) {
    // A stack that overflows on absurd nesting is the document's fault as well.
    if (!(error instanceof Unreadable || error instanceof RangeError)) throw error;
    const message = error instanceof Unreadable ? error.message : w`it is nested too deeply`;
    return err({
      code: 'dcc-unreadable',
      where: file,
      message: w`not a calibration certificate that can be read: ${message}`,
      next: w`Ask the laboratory for a DCC with such points, or type the points into the JSON form.`,
    });
  }
}

function parse(xml: string): Document {
  if (xml.length > MAX_CHARACTERS) throw new Unreadable(w`it is far too large`);
  if (/<!(?:DOCTYPE|ENTITY)/i.test(xml))
    throw new Unreadable(w`it declares a document type, which no DCC does`);
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

function read(document: Document, serials: readonly string[]): unknown {
  const root = document.documentElement;
  if (root === null || root.localName !== 'digitalCalibrationCertificate')
    throw new Unreadable(w`its root is not digitalCalibrationCertificate`);
  const core = needed(first(root, 'dcc', 'coreData'), 'coreData');
  const items = all(root, 'dcc', 'item').filter((item) => item.parentNode?.localName === 'items');
  const laboratory = first(root, 'dcc', 'calibrationLaboratory');
  const { unit, points } = pointsOf(root);
  return {
    number: needed(textOf(first(core, 'dcc', 'uniqueIdentifier')), 'uniqueIdentifier'),
    laboratory: needed(laboratory && textOf(first(laboratory, 'dcc', 'content')), w`name of the laboratory`),
    serial: serialAmong(items, serials),
    date: needed(
      textOf(first(core, 'dcc', 'endPerformanceDate')) ?? textOf(first(core, 'dcc', 'beginPerformanceDate')),
      'endPerformanceDate',
    ),
    unit,
    points,
  };
}

/** The serial number of the one item, of the one that is asked for, or of the only one that has any. */
function serialAmong(items: readonly Element[], wanted: readonly string[]): string {
  if (items.length === 0) throw new Unreadable(w`it is for 0 items; expected one instrument`);
  const serials = items.flatMap((item) => serialOf(item) ?? []);
  const [serial, ...others] = serials;
  if (others.length === 0) return needed(serial, w`serial number of the item`);
  const asked = serials.find((one) => wanted.includes(one));
  if (asked !== undefined) return asked;
  throw new Unreadable(
    w`it is for ${serials.length} instruments, with the serial numbers ${serials.map((one) => `"${one.slice(0, 40)}"`).join(', ')}; give the tool that it is for one of them`,
  );
}

function serialOf(item: Element): string | null {
  const ids = all(item, 'dcc', 'identification');
  const serial =
    ids.find((id) => /serial/i.test(id.getAttribute('refType') ?? '')) ??
    ids.find((id) => textOf(first(id, 'dcc', 'issuer')) === 'manufacturer');
  return serial === undefined ? null : textOf(first(serial, 'dcc', 'value'));
}

interface Points {
  readonly unit: DccQuantity['unit'];
  readonly points: readonly Point[];
}

interface Point {
  readonly reading: number;
  readonly error: number;
  readonly expanded: number;
  readonly k: number;
}

/**
 * The first table or group of quantities that holds a reading and what it was compared with, clockwise where there are several
 * directions. Only results count: what was measured before an adjustment is a condition, and holds no more.
 */
function pointsOf(root: Element): Points {
  const results = needed(first(root, 'dcc', 'measurementResults'), 'measurementResults');
  const groups = [...all(results, 'dcc', 'list'), ...all(results, 'dcc', 'data')]
    .filter((group) => isWithin(group, 'results'))
    .slice(0, MAX_GROUPS);
  let onlyBack = false;
  for (const group of groups) {
    if (turnsBack(group)) {
      onlyBack = true;
      continue;
    }
    const points = pointsIn(group);
    if (points !== null) return points;
  }
  if (onlyBack)
    throw new Unreadable(
      w`its points are for turning counter-clockwise; a spark plug is tightened clockwise`,
    );
  const quantities = groups.flatMap((group) => all(group, 'dcc', 'quantity'));
  const named = quantities.filter((quantity) => roleOf(quantity) !== null);
  const others = otherUnits(named) ?? otherUnits(quantities);
  if (others !== null) throw new Unreadable(w`its points are ${others}, not newton metres or millimetres`);
  throw new Unreadable(w`no result holds readings (basic_measuredValue) with errors or reference values`);
}

function isWithin(element: Element, name: string): boolean {
  for (let at = element.parentNode; at !== null; at = at.parentNode) if (at.localName === name) return true;
  return false;
}

function pointsIn(group: Element): Points | null {
  const quantities = quantitiesOf(group);
  if (!quantities.ok) throw new Unreadable(quantities.error);
  const { reading, error, reference } = quantities.value;
  const readings = reading ?? sum(reference, error);
  const errors = error ?? difference(reading, reference);
  if (readings === null || errors === null) return null;
  const uncertainty = error?.uncertainty ?? reading?.uncertainty ?? reference?.uncertainty ?? null;
  if (uncertainty === null) throw new Unreadable(w`its points carry no expanded uncertainty`);
  if (errors.values.length !== readings.values.length || uncertainty.length !== readings.values.length)
    throw new Unreadable(w`its lists differ in length`);
  const points = readings.values.map((value, i) => ({
    reading: value,
    error: errors.values[i] ?? Number.NaN,
    expanded: uncertainty[i]?.expanded ?? Number.NaN,
    k: uncertainty[i]?.k ?? Number.NaN,
  }));
  // With both directions in one table those of the other one are below zero.
  const forth = points.filter((point) => point.reading >= 0);
  return { unit: readings.unit, points: upAndDown(forth.length >= 2 ? forth : points) };
}

/** Points that were measured up and down give one reading twice: one point, whose U reaches over both. */
function upAndDown(points: readonly Point[]): readonly Point[] {
  const byReading = new Map<number, Point[]>();
  for (const point of points) byReading.set(point.reading, [...(byReading.get(point.reading) ?? []), point]);
  return [...byReading.values()].flatMap((same) => {
    const [point] = same;
    if (point === undefined) return [];
    if (same.length === 1) return point;
    const low = Math.min(...same.map(({ error, expanded }) => error - expanded));
    const high = Math.max(...same.map(({ error, expanded }) => error + expanded));
    const error = Number(((low + high) / 2).toPrecision(12));
    // The smallest k: u is then no smaller than that of any of them.
    return {
      reading: point.reading,
      error,
      expanded: Number(((high - low) / 2).toPrecision(12)),
      k: Math.min(...same.map(({ k }) => k)),
    };
  });
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
    throw new Unreadable(w`readings and reference values do not go together`);
  // Twelve figures are more than any laboratory prints; the rest is noise of binary subtraction.
  return {
    unit: a.unit,
    values: a.values.map((x, i) => Number(combine(x, b.values[i] ?? Number.NaN).toPrecision(12))),
  };
}

function needed<T>(value: T | null | undefined, what: string): T {
  if (value === null || value === undefined || value === '') throw new Unreadable(w`${what} is missing`);
  return value;
}
