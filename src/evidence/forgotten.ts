/** What the log says was forgotten: where texts were, and never what they said. */
import type { StationEntry } from './log.ts';
import type { StationEvent } from './station-event.ts';

type ForgottenText = Extract<StationEvent, { type: 'texts-forgotten' }>['texts'][number];

/** Where a personal text is or was: number of its entry, and which of its texts it is, from 0. */
export type TextPlace = Pick<ForgottenText, 'entry' | 'text'>;

const isAt = (a: TextPlace, b: TextPlace) => a.entry === b.entry && a.text === b.text;

/** By entry, which of its texts were forgotten, and what they were about. */
export function forgottenIn(
  entries: readonly StationEntry[],
): ReadonlyMap<number, ReadonlyMap<number, ForgottenText['kind']>> {
  const all = new Map<number, Map<number, ForgottenText['kind']>>();
  for (const { event } of entries)
    for (const { entry, text, kind } of event.type === 'texts-forgotten' ? event.texts : [])
      all.set(entry, (all.get(entry) ?? new Map<number, ForgottenText['kind']>()).set(text, kind));
  return all;
}

/**
 * The entries that had the same name as this place had: one person is forgotten at a time, so that all names that went with
 * it were his. Empty where the name was not forgotten.
 */
export function forgottenWith(entries: readonly StationEntry[], place: TextPlace): ReadonlySet<number> {
  const together = entries.flatMap(({ event }) => {
    const people =
      event.type === 'texts-forgotten' ? event.texts.filter(({ kind }) => kind === 'person') : [];
    return people.some((one) => isAt(one, place)) ? people : [];
  });
  return new Set(together.map(({ entry }) => entry));
}
