/** What the scripts for bash, zsh and fish have in common. */
import type { Offer, Place } from './offers.ts';

/** In single quotes, as all three shells read it. */
export const quoted = (text: string): string => `'${text.replaceAll("'", '’')}'`;

/** Places of the command line by what is offered there, so that a script names each offer once: `jobs list|--tool`, `jobs show|0`. */
export interface Offered {
  readonly offer: Offer;
  /** Quoted; a last argument that may be given several times stands for all behind it. */
  readonly places: readonly string[];
}

/** What an option takes, and what an argument takes; specific places in front of those that stand for several. */
export function offered(places: readonly Place[]): readonly Offered[] {
  const byOffer = new Map<string, { offer: Offer; places: string[] }>();
  const add = (place: string, offer: Offer) => {
    const key = JSON.stringify(offer);
    const there = byOffer.get(key);
    if (there === undefined) byOffer.set(key, { offer, places: [place] });
    else there.places.push(place);
  };
  for (const { path, values } of places)
    for (const [flag, offer] of values) add(quoted(`${path}|${flag}`), offer);
  for (const { path, arguments: all } of places)
    for (const [at, offer] of all.entries()) add(quoted(`${path}|${at}`), offer);
  for (const { path, arguments: all, variadic } of places) {
    const last = all.at(-1);
    if (variadic && last !== undefined)
      for (let at = all.length; at < all.length + MOST_GIVEN; at++) add(quoted(`${path}|${at}`), last);
  }
  return [...byOffer.values()].filter(({ offer }) => offer.kind !== 'nothing');
}

/** Nobody completes more. */
const MOST_GIVEN = 12;

/** Options that take a value, with the commands that have them. */
export const valued = (places: readonly Place[]): readonly string[] =>
  places.flatMap(({ path, values }) => values.map(([flag]) => quoted(`${path}|${flag}`)));

export const paths = (places: readonly Place[]): readonly string[] =>
  places.flatMap(({ path }) => (path === '' ? [] : [quoted(path)]));
