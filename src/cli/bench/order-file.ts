import { join } from 'node:path';
import { parseStrictJson } from '../../evidence/strict-json.ts';
import { makeFolder } from '../../files/output.ts';
import { type WorkOrder, workOrderSchema } from '../../job/order.ts';
import { ProblemError, problemFromZod } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { readJson } from '../station/json-file.ts';
import { jsonThenLines } from '../terminal/json-then-lines.ts';
import { writeJson } from './specification-files.ts';

/** An order, and where it was read. */
export interface ReadOrder {
  readonly where: string;
  readonly order: WorkOrder;
}

const MANUAL = '"plugmark manual work-order"';

/** An order from a file, or with `-` from the standard input, whose further lines are keys as ever. */
export async function readOrder(path: string): Promise<ReadOrder> {
  if (path !== '-')
    return { where: path, order: await readJson(path, workOrderSchema, w`work order`, MANUAL) };
  const where = w`standard input`;
  const value = orThrow(parseStrictJson(await jsonThenLines(process.stdin), where));
  const parsed = workOrderSchema.safeParse(value);
  const next = w`Compare it with ${MANUAL}.`;
  if (!parsed.success) throw new ProblemError(problemFromZod(parsed.error, where, 'input-not-valid', next));
  return { where, order: parsed.data };
}

/** Keeps an order that was typed, like one from a file, in the station's folder. Its schema makes the number safe in a path. */
export function keepOrder(folder: string, order: WorkOrder): string {
  const orders = join(folder, 'orders');
  makeFolder(orders);
  const path = join(orders, `${order.job}.json`);
  writeJson(path, order);
  return path;
}
