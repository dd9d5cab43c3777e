/**
 * Published general tables of tightening torque, by thread, seat and head: the fallback of last resort and a limit of
 * plausibility for typed figures. Never a job's figure of its own accord. Publishers are named only to cite them.
 */
import type { TorqueUnit } from '../quantity/torque.ts';
import type { Fit } from './specification.ts';

interface TableSource {
  readonly cited: string;
  readonly unit: TorqueUnit;
  readonly threads: 'dry' | 'lightly oiled' | 'not stated';
}

const SOURCES = {
  catalogue: { cited: 'NGK, European catalogue 2016/17', unit: 'N.m', threads: 'dry' },
  chart: { cited: 'NGK, installation chart, US edition', unit: '[ft_i].[lbf_av]', threads: 'dry' },
  standard: { cited: 'NGK, general standard, Japanese edition', unit: 'N.m', threads: 'dry' },
  trade: { cited: 'Autoland Brunn, trade table for new plugs', unit: 'N.m', threads: 'lightly oiled' },
  single: { cited: 'Iskra Kielce, table of single figures', unit: 'N.m', threads: 'not stated' },
  university: {
    cited: 'LSU AgCenter, Spark Plug Tightening Torque, 2006',
    unit: '[ft_i].[lbf_av]',
    threads: 'not stated',
  },
  torque: { cited: 'Denso, tightening torque page', unit: 'N.m', threads: 'dry' },
} as const satisfies Readonly<Record<string, TableSource>>;

type Pair = readonly [lower: number, upper: number];
/** Cast iron and aluminium; null where the publisher gives nothing. */
type Heads = readonly [castIron: Pair | null, aluminium: Pair | null];
type Key = `${Fit['thread']}/${Fit['seat']}`;

const both = (lower: number, upper: number): Heads => [
  [lower, upper],
  [lower, upper],
];

const TABLES: Readonly<Record<keyof typeof SOURCES, Partial<Record<Key, Heads>>>> = {
  catalogue: {
    'M10x1/gasket': [
      [10, 15],
      [10, 12],
    ],
    'M12x1.25/gasket': [
      [15, 25],
      [15, 20],
    ],
    'M14x1.25/gasket': [
      [25, 35],
      [25, 30],
    ],
    'M18x1.5/gasket': [
      [35, 45],
      [35, 40],
    ],
    'M14x1.25/conical': [
      [15, 25],
      [10, 20],
    ],
    'M18x1.5/conical': both(20, 30),
  },
  chart: {
    'M8x1/gasket': [null, [5.8, 7.2]],
    'M10x1/gasket': [
      [7.2, 10.8],
      [7.2, 8.7],
    ],
    'M12x1.25/gasket': [
      [10.8, 18],
      [10.8, 14.5],
    ],
    'M14x1.25/gasket': [
      [18, 25.3],
      [18, 21.6],
    ],
    'M18x1.5/gasket': both(25.3, 32.5),
    'M14x1.25/conical': [
      [10.8, 18],
      [7.2, 14.5],
    ],
    'M18x1.5/conical': both(14.5, 21.6),
  },
  standard: {
    'M8x1/gasket': both(8, 10),
    'M10x1/gasket': both(10, 12),
    'M12x1.25/gasket': both(15, 20),
    'M14x1.25/gasket': both(25, 30),
    'M18x1.5/gasket': both(35, 40),
    'M14x1.25/conical': both(10, 20),
    'M18x1.5/conical': both(10, 20),
  },
  trade: {
    'M10x1/gasket': both(10, 15),
    'M12x1.25/gasket': both(15, 25),
    'M14x1.25/gasket': [
      [20, 40],
      [20, 30],
    ],
    'M18x1.5/gasket': [
      [30, 45],
      [20, 35],
    ],
    'M14x1.25/conical': [
      [20, 25],
      [15, 25],
    ],
    'M18x1.5/conical': [
      [20, 30],
      [15, 23],
    ],
  },
  single: {
    'M10x1/gasket': both(14, 14),
    'M14x1.25/gasket': [
      [35, 35],
      [28, 28],
    ],
    'M18x1.5/gasket': [
      [40, 40],
      [35, 35],
    ],
    'M14x1.25/conical': both(20, 20),
    'M18x1.5/conical': [
      [30, 30],
      [20, 20],
    ],
  },
  university: {
    'M10x1/gasket': both(7, 11),
    'M12x1.25/gasket': both(11, 19),
    'M14x1.25/gasket': [
      [26, 29],
      [15, 22],
    ],
    'M18x1.5/gasket': [
      [32, 38],
      [28, 34],
    ],
    'M14x1.25/conical': both(7, 15),
    'M18x1.5/conical': both(15, 20),
  },
  torque: { 'M8x1/gasket': both(8, 10) },
};

/** What one publisher says of a fit, in the unit in which it was printed. */
export interface TableRow extends TableSource {
  readonly printed: string;
  readonly lower: number;
  readonly upper: number;
}

/** What the published tables say; empty where none has a figure. */
export function generalTable({ thread, seat, head }: Fit): readonly TableRow[] {
  return (Object.keys(SOURCES) as (keyof typeof SOURCES)[]).flatMap((id) => {
    const pair = TABLES[id][`${thread}/${seat}`]?.[head === 'aluminium' ? 1 : 0] ?? null;
    if (pair === null) return [];
    const [lower, upper] = pair;
    const unit = SOURCES[id].unit === 'N.m' ? 'N·m' : 'lbf·ft';
    const printed = lower === upper ? `${lower} ${unit}` : `${lower}-${upper} ${unit}`;
    return [{ ...SOURCES[id], printed, lower, upper }];
  });
}
