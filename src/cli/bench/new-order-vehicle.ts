/** The first questions of a new order: which job, who works, which vehicle. */
import { type WorkOrder, workOrderSchema } from '../../job/order.ts';
import { normalVin, vinFault } from '../../job/vin.ts';
import { hasPhoneNumber, isWithheld } from '../../personal.ts';
import { phoneNote } from '../../report/words/index.ts';
import { err, ok, type Result } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import type { Dialogue } from '../terminal/dialogue.ts';
import { safeLine } from '../terminal/exit.ts';
import { askMaybe, askUntil, parse, promptFor } from '../terminal/questions.ts';
import type { Earlier, StationHistory } from './earlier-orders.ts';
import type { Answers } from './new-order-answers.ts';

const { vehicle, job: jobSchema, technician: technicianSchema, complaint } = workOrderSchema.shape;

/** The number of a job that is not there yet, or of one that is open, which then goes on. */
export function askNumber(dialogue: Dialogue, usual: string, history: StationHistory): Promise<string> {
  return askUntil(dialogue, promptFor(w`Job number`, usual), (answer) => {
    const number = parse(jobSchema, answer || usual);
    if (!number.ok || !history.has(number.value) || history.open.includes(number.value)) return number;
    return err(w`job ${number.value} exists and is closed`);
  });
}

/** By a number of the list, or by name; a name that is not on the list is somebody new. */
export async function askTechnician(
  dialogue: Dialogue,
  usual: string | null,
  people: readonly string[],
): Promise<string> {
  if (people.length > 1)
    dialogue.say(`  ${people.map((name, i) => `${i + 1} ${safeLine(name)}`).join('  ')}`);
  const name = await askUntil(dialogue, promptFor(w`Technician`, usual ?? undefined), (answer) => {
    const given = answer || (usual ?? '');
    if (!/^\d+$/.test(given))
      return parse(
        technicianSchema,
        people.find((one) => one.toLowerCase() === given.toLowerCase()) ?? given,
      );
    const byNumber = people[Number(given) - 1];
    return byNumber === undefined ? err(w`this number is not in the list`) : ok(byNumber);
  });
  if (!people.includes(name)) dialogue.say(w`  Note: ${safeLine(name)} is new at this station.`);
  return name;
}

/** The plate; what is known of the vehicle that bears it is proposed from here on. */
export async function askPlate(
  dialogue: Dialogue,
  answers: Answers,
  history: StationHistory,
): Promise<Answers> {
  const plate = await askMaybe(dialogue, w`Plate`, answers.plate, (text) =>
    parse(vehicle.shape.plate.unwrap(), text),
  );
  const earlier = plate === null ? null : history.vehicle('plate', plate);
  return recognised(dialogue, { ...answers, plate }, earlier);
}

/** The VIN, with its check digit looked at: binding where the market makes it so, said elsewhere. */
export async function askVin(
  dialogue: Dialogue,
  answers: Answers,
  history: StationHistory,
): Promise<Answers> {
  const vin = await askMaybe<string>(dialogue, w`VIN`, answers.vin, (text) => {
    const fault = vinFault(text);
    if (fault === null || !fault.illegal) return parse(vehicle.shape.vin.unwrap(), normalVin(text));
    return err(`${fault.problem.message}. ${fault.problem.next}`);
  });
  const doubt = vin === null ? null : vinFault(vin);
  if (doubt !== null) dialogue.say(w`  Note: ${`${doubt.problem.message}. ${doubt.problem.next}`}`);
  const earlier = vin === null ? null : history.vehicle('vin', vin);
  return recognised(dialogue, { ...answers, vin }, earlier);
}

export async function askFleet(
  dialogue: Dialogue,
  answers: Answers,
  history: StationHistory,
): Promise<Answers> {
  const fleet = await askMaybe(dialogue, w`Fleet number`, answers.fleet, (text) =>
    parse(vehicle.shape.fleet.unwrap(), text),
  );
  const earlier = fleet === null ? null : history.vehicle('fleet', fleet);
  return recognised(dialogue, { ...answers, fleet }, earlier);
}

export async function askDescription(dialogue: Dialogue, answers: Answers): Promise<Answers> {
  const description = await askMaybe(dialogue, w`Make, model, year`, answers.description, (text) =>
    parse(vehicle.shape.description.unwrap(), text),
  );
  return { ...answers, description };
}

export async function askOdometer(dialogue: Dialogue, answers: Answers): Promise<Answers> {
  const before = answers.earlier?.order.vehicle.odometerKm;
  const text = before === undefined ? w`Odometer, km or mi` : w`Odometer, km or mi (last time ${before} km)`;
  const usual = answers.odometerKm === null ? null : String(answers.odometerKm);
  const odometerKm = await askMaybe(dialogue, text, usual, typedOdometer);
  if (odometerKm !== null && before !== undefined && odometerKm < before)
    dialogue.say(w`  Note: less than last time (${before} km).`);
  return { ...answers, odometerKm };
}

export async function askComplaint(dialogue: Dialogue, answers: Answers): Promise<Answers> {
  const answer = await askMaybe(
    dialogue,
    w`Why it came, in the customer's words`,
    answers.complaint,
    (text) => parse(complaint.unwrap(), text),
  );
  if (answer !== null && hasPhoneNumber(answer)) dialogue.say(w`  Note: ${phoneNote()}`);
  return { ...answers, complaint: answer };
}

/** Kilometres; miles as the orders's field has them, to the nearest kilometre. 1 mi is 1.609344 km by definition. */
export function typedOdometer(text: string): Result<number, string> {
  const [, figure = '', unit = ''] = /^(\d[\d.,' ]*)\s*(km|mi|miles)?$/i.exec(text) ?? [];
  const digits = figure.replace(/[.,' ](?=\d{3}(?!\d))/g, '').trim();
  if (!/^\d{1,7}$/.test(digits)) return err(w`expected whole kilometres or miles, such as 84210 or 52300 mi`);
  return ok(/^mi/i.test(unit) ? Math.round(Number(digits) * 1.609344) : Number(digits));
}

/**
 * What stands still empty is proposed as it was last time, which is said. A vehicle that was taken for another one before
 * takes that one's facts with it.
 */
function recognised(dialogue: Dialogue, answers: Answers, earlier: Earlier | null): Answers {
  const before = answers.earlier?.order.job;
  if (earlier === null || earlier.order.job === before) return answers;
  const { vehicle: then, job, engine, plug, specification, adapter, flexJoint } = earlier.order;
  dialogue.say(w`  This vehicle was here on ${earlier.on}, job ${job}. Its entries are proposed.`);
  for (const line of earlier.questioned) dialogue.say(`  ! ${line}`);
  const kept = before === undefined ? answers : { plate: null, vin: null, fleet: null, description: null };
  const figures = answers.figures?.from === asIn(before ?? '') ? null : answers.figures;
  return {
    ...answers,
    earlier,
    plate: asThen(kept.plate, then.plate),
    vin: asThen(kept.vin, then.vin),
    fleet: asThen(kept.fleet, then.fleet),
    description: asThen(kept.description, then.description),
    figures: figures ?? figuresOf(specification, { engine, plug, from: asIn(job) }),
    adapter: answers.adapter ?? adapter ?? null,
    flexJoint: answers.flexJoint ?? flexJoint ?? null,
  };
}

/** Without a name that was forgotten; not at all where the rule of the shop has lost whoever set it. */
function figuresOf(
  { checkedBy, ...specification }: WorkOrder['specification'],
  others: Pick<NonNullable<Answers['figures']>, 'engine' | 'plug' | 'from'>,
): Answers['figures'] {
  const { reduction, singleFigure } = specification;
  if ([reduction, singleFigure].some((rule) => rule !== undefined && isWithheld(rule.setBy))) return null;
  const checked = checkedBy === undefined || isWithheld(checkedBy) ? {} : { checkedBy };
  return { ...others, specification: { ...specification, ...checked } };
}

/** In the writing of last time, unless something else was said. */
const asThen = (given: string | null, then: string | undefined): string | null =>
  then !== undefined && !isWithheld(then) && (given === null || normalVin(given) === normalVin(then))
    ? then
    : given;

const asIn = (job: string) => w`as in ${job}`;
