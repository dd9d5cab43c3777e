import { join } from 'node:path';
import { makeFolder } from '../../files/output.ts';
import type { WorkOrder } from '../../job/order.ts';
import { writeJson } from './specification-files.ts';

/** Keeps an order that was typed, like one from a file, in the station's folder. Its schema makes the number safe in a path. */
export function keepOrder(folder: string, order: WorkOrder): string {
  const orders = join(folder, 'orders');
  makeFolder(orders);
  const path = join(orders, `${order.job}.json`);
  writeJson(path, order);
  return path;
}
