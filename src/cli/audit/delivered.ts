import { type DeliveredUnder, deliveredGaps } from '../../audit/delivered.ts';
import { figure } from '../../report/figures.ts';
import { shareText } from '../../report/process.ts';
import { marksText } from '../../report/words/index.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { printJson } from '../answers/answer.ts';
import { deliveredAnswered } from '../answers/capability.ts';
import type { Asked } from '../declare/filters.ts';
import { EXIT, type ExitCode } from '../terminal/exit.ts';
import { textTable } from '../terminal/text-table.ts';
import { print } from '../terminal/wrapped.ts';
import { filterOf } from './ask.ts';
import { type AskedScope, withRecords } from './asked.ts';

/** Gaps of new plugs as they came out of the box, by part and lot. */
export function showDelivered(options: AskedScope & Asked & { readonly json?: true }): Promise<ExitCode> {
  return withRecords(options, async ({ records }) => {
    const rows = await records.attemptsOf({ ...filterOf(options), quantity: 'length' });
    const setups = await records.setupsOf(new Set(rows.map(({ setupKey }) => setupKey)));
    const isNew = (key: string) => setups.get(key)?.plug.condition !== 'used';
    const delivered = orThrow(deliveredGaps(rows, isNew));
    if (options.json === true) {
      printJson(deliveredAnswered(delivered));
      return EXIT.done;
    }
    const { under, marks, markedLeftOut } = delivered;
    if (under.length === 0) print([w`No gap of a new plug matches.`]);
    if (marks.length > 0) print([w`${marksText(marks)}: this says nothing about real plugs.`]);
    if (markedLeftOut > 0) print([w`Left out: ${markedLeftOut} gaps that were SIMULATED or REPLAYED.`]);
    for (const one of under) print(deliveredLines(one));
    return EXIT.done;
  });
}

function deliveredLines({ lowerLimit, upperLimit, lots }: DeliveredUnder): readonly string[] {
  const mm = (value: number | null) => (value === null ? '-' : figure(value, 'mm'));
  const cells = lots.map((lot) => [
    lot.part,
    lot.lot ?? w`(none)`,
    String(lot.n),
    String(lot.measured),
    mm(lot.meanMm),
    mm(lot.standardDeviationMm),
    mm(lot.smallestMm),
    mm(lot.largestMm),
    shareText(lot.outside),
    lot.outsideAtWorst.n === lot.outside.n ? '-' : shareText(lot.outsideAtWorst),
  ]);
  const head = [
    w`part`,
    w`lot`,
    w`plugs`,
    w`measured`,
    w`mean`,
    's',
    w`smallest`,
    w`largest`,
    w`out of gap (95 %)`,
    w`at worst`,
  ];
  return [
    w`Gaps as delivered, limits ${figure(lowerLimit, 'mm')} to ${figure(upperLimit, 'mm')} mm`,
    ...textTable(head, cells),
    ...(lots.some(({ n, measured }) => measured < n)
      ? [
          w`Plugs not measured were tried with wires. "At worst" counts those as out of gap that wires could not decide.`,
        ]
      : []),
  ];
}
