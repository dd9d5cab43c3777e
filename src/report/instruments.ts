import type { LogEntry } from '../evidence/log.ts';
import { dueDate } from '../instrument/fitness.ts';
import type { Instrument, InstrumentInUse } from '../instrument/instrument.ts';
import type { JobEventOf } from '../job/event.ts';
import type { JobState } from '../job/state.ts';
import { phrases, plainFigure, w } from '../words/catalogue.ts';
import { clean } from './clean.ts';
import { promiseWords, SOURCE_WORD } from './words/index.ts';

/** An instrument as the station lists it, and as it called itself when it joined. */
export interface InstrumentRow {
  readonly id: string;
  readonly measures: string;
  readonly serial: string;
  readonly deviation: string;
  readonly basis: string;
  readonly device: string;
  readonly link: string;
}

export function instrumentRows(state: JobState, entries: readonly LogEntry[]): InstrumentRow[] {
  return state.instruments.map((instrument) => {
    const joined = entries.flatMap(({ event }) =>
      event.type === 'tool-linked' && event.tool === instrument.id ? [event] : [],
    );
    return {
      id: instrument.id,
      measures: instrument.quantity === 'torque' ? w`torque` : w`gap`,
      serial: clean(instrument.serial ?? '') || w`not given`,
      deviation: w`${deviationText(instrument)}; step ${`${plainFigure(instrument.resolution)} ${unitOf(instrument)}`}`,
      basis: clean(basisText(instrument)),
      device: differing(joined.map(deviceText)) || w`never joined`,
      link: differing(joined.map(linkText)) || w`none`,
    };
  });
}

function unitOf(instrument: Instrument): string {
  return instrument.quantity === 'torque' ? 'N·m' : 'mm';
}

function deviationText(instrument: Instrument): string {
  const { permissibleDeviation: deviation } = instrument;
  if (deviation === undefined) return w`none listed`;
  return deviation.kind === 'relative'
    ? w`±${deviation.percent} % of the reading`
    : `±${plainFigure(deviation.amount)} ${unitOf(instrument)}`;
}

/** The certificate, where there is one; it goes before the promise of the maker. */
function basisText(instrument: InstrumentInUse): string {
  const { certificate, correct } = instrument;
  if (certificate === undefined) return promiseWords(instrument);
  const { number, laboratory, date } = certificate;
  const due = dueDate(instrument);
  const until = due === null ? '' : w`, due ${due}`;
  const error = correct === true ? w`its errors taken off` : w`its errors kept in the uncertainty`;
  return w`certificate ${number}, ${laboratory}, ${date}${until}; ${error}`;
}

function deviceText({ description }: JobEventOf<'tool-linked'>): string {
  const { maker, model, serial, firmware } = description;
  const parts = [maker, model, serial && w`serial ${serial}`, firmware && w`firmware ${firmware}`];
  return (
    clean(parts.filter((part) => part !== undefined && part !== '').join(', ')) || w`says nothing of itself`
  );
}

const LINK_KIND = phrases({
  'bluetooth-le': 'Bluetooth LE',
  direct: 'direct',
  file: 'from a file',
  keyboard: 'as a keyboard',
  serial: 'serial port',
});

function linkText({ driver, source, description: { link } }: JobEventOf<'tool-linked'>): string {
  const address = link.address === undefined ? '' : ` ${link.address}`;
  const proof = link.authenticated ? w`authenticated` : w`not authenticated`;
  return clean(w`${LINK_KIND[link.kind]}${address}, ${proof}, driver ${driver}; ${SOURCE_WORD[source]}`);
}

/** Each once, in order: a tool that came back with another name must not hide behind the first. */
function differing(texts: readonly string[]): string {
  return [...new Set(texts)].join(w`; then `);
}
