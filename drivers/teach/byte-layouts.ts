import { joined, sentence } from '../../src/words/catalogue.ts';
import { type ByteFigure, figuresIn } from './byte-search.ts';
import type { Candidate, Field, Unexplained } from './candidate.ts';
import { type ChecksumPlace, findChecksum } from './checksum-search.ts';
import { allFrames, bitParts, isConstant, isCounter } from './leftover.ts';
import type { Observed, Parts } from './observed.ts';

export function byteLayouts(observed: Observed, parts: Parts): readonly Candidate[] | Unexplained {
  const checksum = findChecksum(allFrames(parts));
  const taken = new Set(checksum === undefined ? [] : range(checksum.at, checksum.size));
  const figures = figuresIn(observed, parts, taken);
  if (figures.length === 0) return { why: 'no-figure', bytes: [] };
  let best: readonly number[] | undefined;
  const candidates: Candidate[] = [];
  for (const group of samplesOf(figures)) {
    const made = layoutOf(group, checksum, parts);
    if ('fields' in made) candidates.push(candidateOf(group, made.fields));
    else if (best === undefined || made.unexplained.length < best.length) best = made.unexplained;
  }
  return candidates.length > 0 ? candidates : { why: 'bytes-unexplained', bytes: best ?? [] };
}

const range = (at: number, size: number) => Array.from({ length: size }, (_, i) => at + i);

type Group = readonly [ByteFigure, ...ByteFigure[]];

/** Figures of one kind that lie one behind the other are samples; each of them alone would leave the others unexplained. */
function samplesOf(figures: readonly ByteFigure[]): readonly Group[] {
  const key = ({ place, worth, sign }: ByteFigure) =>
    JSON.stringify([place.kind, place.byteOrder, worth.scale, worth.unit, sign]);
  const groups: [ByteFigure, ...ByteFigure[]][] = [];
  for (const figure of figures.toSorted((a, b) => a.place.at - b.place.at)) {
    const before = groups.find(([first, ...rest]) => {
      const { place } = rest.at(-1) ?? first;
      return key(first) === key(figure) && place.at + place.size === figure.place.at;
    });
    if (before === undefined) groups.push([figure]);
    else before.push(figure);
  }
  return groups;
}

function candidateOf(group: Group, fields: readonly Field[]): Candidate {
  const [{ place, worth, sign }] = group;
  const { at, byteOrder, kind, size, isSigned } = place;
  const first = { big: sentence`big end first`, little: sentence`little end first` }[byteOrder];
  const many = group.length > 1 ? [sentence`${group.length} samples`] : [];
  const apart = sign === null ? [] : [sentence`below 0 where bit ${sign.bit} of byte ${sign.at} is set`];
  return {
    layout: { of: 'bytes', byteOrder, fields },
    summary: joined(
      [sentence`${kind} at byte ${at} (${first})`, () => `${worth.scale} ${worth.unit}`, ...apart, ...many],
      ', ',
    ),
    size,
    isSigned: isSigned || sign !== null,
    reads: [at, byteOrder, worth.scale, worth.unit].join(' '),
  };
}

type LayoutOutcome = { readonly fields: readonly Field[] } | { readonly unexplained: readonly number[] };

function layoutOf(group: Group, checksum: ChecksumPlace | undefined, parts: Parts): LayoutOutcome {
  const [{ place, worth, sign }] = group;
  const all = allFrames(parts);
  const length = all[0]?.length ?? 0;
  const own = place.field(worth, parts);
  if (own === undefined) return { unexplained: range(place.at, place.size) };
  const ends = new Set([place.at, checksum?.at, sign?.at]);
  const fields: Field[] = [];
  const unexplained: number[] = [];
  for (let at = 0; at < length; ) {
    if (at === place.at) {
      fields.push(group.length === 1 ? own : { is: 'samples', count: group.length, fields: [own] });
      at += place.size * group.length;
    } else if (checksum !== undefined && at === checksum.at) {
      const { kind, from, byteOrder, size } = checksum;
      fields.push({ is: 'checksum', kind, from, byteOrder });
      at += size;
    } else if (sign !== null && at === sign.at) {
      const others = bitParts(parts, (frame) => frame[sign.at] ?? 0, 8, { bit: sign.bit, bits: 1 });
      if (others === undefined) unexplained.push(at);
      else
        fields.push({
          is: 'bits',
          type: 'uint8',
          parts: [{ is: 'flag', bit: sign.bit, means: 'negative' }, ...others],
        });
      at += 1;
    } else if (isConstant(all, at)) {
      let end = at + 1;
      while (end < length && !ends.has(end) && isConstant(all, end)) end += 1;
      fields.push({ is: 'fixed', hex: all[0]?.toString('hex', at, end) });
      at = end;
    } else {
      const here = at;
      if (isCounter(parts, (frame) => frame[here] ?? 0, 256))
        fields.push({ is: 'counter', type: 'uint8', counts: 'frames' });
      else unexplained.push(at);
      at += 1;
    }
  }
  return unexplained.length === 0 ? { fields } : { unexplained };
}
