/** Whatever stands twice in a record must be the same in both places: here, in its entries and in the station's own. */
import { writerOf } from '../job/command-event.ts';
import type { JobEventOf } from '../job/event.ts';
import { isWithheld } from '../personal.ts';
import { withoutNames } from '../plug/specification.ts';
import { type Sentence, sentence } from '../words/catalogue.ts';
import { canonical } from './canonical.ts';
import type { LogEntry } from './log.ts';
import type { JobRecord } from './record.ts';

/** The first place where the entries of a job contradict each other or the station's own; null where none does. */
export function contradictionIn({ entries, background }: JobRecord): Sentence | null {
  const [opening] = entries;
  if (opening?.event.type !== 'job-opened')
    return sentence`The entries do not begin with the opening of a job.`;
  const opened = opening.event;
  const before = background.filter(({ seq }) => seq < opening.seq).map(({ event }) => event);
  const day = opening.at.slice(0, 10);
  if (opened.basis.on !== day)
    return sentence`The job was opened on ${day}, but its certificates were looked at as on ${opened.basis.on}.`;
  return instrumentFault(opened, before) ?? specificationFault(opened, before) ?? entryFault(opened, entries);
}

type StationEvents = readonly JobRecord['background'][number]['event'][];

/** An instrument or calibration that was put in only for this job would not stand in the station's log before it. */
function instrumentFault({ instruments }: JobEventOf<'job-opened'>, before: StationEvents): Sentence | null {
  const recorded = new Map(
    before.flatMap((event) =>
      event.type === 'instrument-recorded' ? [[event.instrument.id, canonical(event.instrument)]] : [],
    ),
  );
  const stranger = instruments.find((one) => recorded.get(one.id) !== canonical(one));
  return stranger === undefined
    ? null
    : sentence`The instrument ${stranger.id} is not as the station's log has it.`;
}

function specificationFault({ order }: JobEventOf<'job-opened'>, before: StationEvents): Sentence | null {
  const written = canonical(withoutNames(order.specification));
  return before.some(
    (event) =>
      event.type === 'specification-recorded' && canonical(withoutNames(event.specification)) === written,
  )
    ? null
    : sentence`The specification of the order is not as the station's log has it.`;
}

/** A name that is withheld may be any, but is one. */
function isBy(by: string, due: string): boolean {
  const isNamed = (who: string) => who !== 'station' && who !== 'technician';
  return isWithheld(by) || isWithheld(due) ? isNamed(by) && isNamed(due) : by === due;
}

function entryFault(
  { instruments }: JobEventOf<'job-opened'>,
  entries: readonly LogEntry[],
): Sentence | null {
  const byId = new Map(instruments.map((one) => [one.id, one]));
  for (const { event, by, n } of entries) {
    if (!isBy(by, writerOf(event)))
      return sentence`Entry n=${n} (${event.type}) is not by whom such an entry is.`;
    if (event.type !== 'tool-linked') continue;
    const { description } = event;
    const instrument = byId.get(event.tool);
    if (instrument?.quantity !== description.quantity)
      return sentence`Entry n=${n}: the tool that joined as ${event.tool} does not measure what the order's instrument does.`;
    // What a file or a keyboard brings has no serial number of its own to be held against.
    const { kind } = description.link;
    const overTheAir = kind === 'bluetooth-le' && instrument.serial !== undefined;
    if (overTheAir && description.serial !== instrument.serial)
      return sentence`Entry n=${n}: the tool that joined as ${event.tool} has another serial number than the instrument.`;
  }
  return null;
}
