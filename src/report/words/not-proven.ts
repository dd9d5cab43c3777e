/** What a reader could take for proven by a record, and is not. */
import { WITNESSES } from '../../evidence/by-policy.ts';
import type { Check } from '../../evidence/check.ts';
import type { VerificationReport } from '../../evidence/verify.ts';
import type { JobEvent } from '../../job/event.ts';
import type { Specification } from '../../plug/specification.ts';
import { isSingleFigure } from '../../plug/tightening.ts';
import { type FigureSource, figureSourceSchema } from '../../reading.ts';
import { phrases, w } from '../../words/catalogue.ts';
import { listed } from './list.ts';

/** Of every record, and so of every package. */
const NOT_PROVEN_BY_ANY: readonly string[] = phrases([
  'which vehicle it was: VIN, plate and the other particulars of the order are as somebody typed them',
  'who was at work: names are as typed, and a key signs for whoever has it',
  'that a pull was on the plug that it was given to: order of work and answers of people say so, no sensor does',
  'that the station sent on what its tools sent: whoever holds its keys can write readings that no tool sent',
  'where a figure came from: the station states it. One that plays a recording and calls it linked cannot be told from an honest one',
  "that the certificates are genuine: it holds their points as the station has them, not the laboratory's document",
]);

/** Of whatever a station sealed. Where enough witnesses cosigned its log, it is they who say that there is one history. */
export const notProvenByAny = (checks: readonly Check[]): readonly string[] => [
  ...NOT_PROVEN_BY_ANY,
  checks.some(({ name, outcome }) => name === WITNESSES && outcome === 'passed')
    ? w`that the station keeps no other history: the witnesses that your policy names say so, and nobody else`
    : w`that the station keeps no other history: only witnesses, a checkpoint that somebody else kept, or a time stamp show that nothing was rewritten`,
];

/** For one record; empty where the verdict is that it must not be relied on at all. */
export function notProvenByRecord({ verdict, record, checks }: VerificationReport): readonly string[] {
  if (record === null || verdict === 'rejected' || verdict === 'unreadable') return [];
  const stamped = checks.some(({ name, outcome }) => name === 'trusted time' && outcome === 'passed');
  return [
    ...linkLines(record.entries.map(({ event }) => event)),
    ...record.entries.flatMap(({ event }) =>
      event.type === 'job-opened' ? shopRuleLines(event.order.specification) : [],
    ),
    ...notProvenByAny(checks),
    ...(verdict === 'other-rules'
      ? [w`the verdicts: they were not judged again. Verify it with the version that made it as well`]
      : []),
    w`that nothing of the job came behind its last entry here: a job that goes on has more entries in the log`,
    stamped
      ? w`the times of its entries: they are those of the clock of the station. The time stamp proves by when it was sealed`
      : w`the times: they are those of the clock of the station`,
  ];
}

/** The limits of a figure that was printed alone are the shop's. */
function shopRuleLines({ torque, tightenFirst = '', singleFigure }: Specification): readonly string[] {
  const single = singleFigure === undefined ? [] : [tightenFirst, torque].filter(isSingleFigure);
  return single.map(
    (figure) =>
      w`that the maker allows the torque limits: the source prints ${figure} alone, and plus/minus ${singleFigure?.percent ?? 0} % is the SHOP'S own rule`,
  );
}

function linkLines(events: readonly JobEvent[]): readonly string[] {
  const links = events.flatMap((event) => (event.type === 'tool-linked' ? [event] : []));
  const isOpen = ({ description }: (typeof links)[number]) => !description.link.authenticated;
  return figureSourceSchema.options.flatMap((source) => {
    const some = links.filter((link) => link.source === source && (source !== 'linked' || isOpen(link)));
    const tools = [...new Set(some.map(({ tool }) => tool))];
    return tools.length === 0 ? [] : [UNPROVEN_LINK[source](listed(tools))];
  });
}

const UNPROVEN_LINK: Readonly<Record<FigureSource, (tools: string) => string>> = {
  linked: (tools) =>
    w`that the readings came from the named instruments: the link of ${tools} was not authenticated, and another device could have taken the place of the tool`,
  typed: (tools) => w`what an instrument read: figures of ${tools} were typed`,
  replayed: (tools) => w`anything that ${tools} would show: the readings came from a recording`,
  simulated: (tools) => w`anything that ${tools} would show: there was no instrument`,
};
