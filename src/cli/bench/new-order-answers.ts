/** What has been said of a new job, and the work order that it makes. */
import { type LibraryEntry, libraryEntrySchema } from '../../job/library.ts';
import { type WorkOrder, workOrderSchema } from '../../job/order.ts';
import type { Adapter, FlexJoint } from '../../plug/geometry.ts';
import { pathText } from '../../problem.ts';
import { err, ok, type Result } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import type { Earlier } from './earlier-orders.ts';
import type { Chosen } from './new-order-figures.ts';

/** What was said so far; null where nothing is said. */
export interface Answers {
  readonly job: string;
  readonly technician: string | null;
  readonly plate: string | null;
  readonly vin: string | null;
  readonly fleet: string | null;
  readonly description: string | null;
  readonly odometerKm: number | null;
  readonly complaint: string | null;
  readonly figures: Chosen | null;
  readonly adapter: Adapter | null;
  readonly flexJoint: FlexJoint | null;
  /** The vehicle's last job, once it is recognised. */
  readonly earlier: Earlier | null;
  /** The name under which typed figures go into the library. */
  readonly keepAs: string | null;
}

export const NOTHING: Answers = {
  job: '',
  technician: null,
  plate: null,
  vin: null,
  fleet: null,
  description: null,
  odometerKm: null,
  complaint: null,
  figures: null,
  adapter: null,
  flexJoint: null,
  earlier: null,
  keepAs: null,
};

/** The answers as a work order; what was left out is not in it. */
export function orderOf(answers: Answers): Result<WorkOrder> {
  const { job, technician, plate, vin, fleet, description, odometerKm, complaint } = answers;
  const { adapter, flexJoint } = answers;
  const { engine, plug, specification } = answers.figures ?? {};
  const given = (fields: Record<string, unknown>) =>
    Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== null && value !== undefined));
  const parsed = workOrderSchema.safeParse({
    form: 'plugmark/work-order/1',
    job,
    vehicle: given({ vin, plate, description, odometerKm, fleet }),
    ...given({ technician, complaint, engine, plug, specification, adapter, flexJoint }),
  });
  if (parsed.success) return ok(parsed.data);
  const issue = parsed.error.issues[0];
  return err({
    code: 'order-not-complete',
    where: pathText(issue?.path ?? []),
    message: issue?.message ?? w`not valid`,
    next: w`Enter that line again.`,
  });
}

/** The library entry of figures that were typed and are to be kept; null where they are not. */
export function entryOf({ keepAs, figures, technician }: Answers, on: string): LibraryEntry | null {
  if (keepAs === null || figures === null || technician === null) return null;
  const { engine, plug, specification } = figures;
  return libraryEntrySchema.parse({
    form: 'plugmark/specification/1',
    name: keepAs,
    engine,
    plug,
    specification,
    enteredBy: technician,
    enteredOn: on,
  });
}
