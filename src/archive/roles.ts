/** Who asks an archive, and what each role may ask for: one closed table, and nothing that is not in it. */

export type Role = 'station' | 'foreman' | 'auditor' | 'adjuster' | 'operator';

/** What an archive gives out, or lets somebody decide. */
export type Asked = 'records' | 'bodies' | 'live' | 'package' | 'assessments' | 'holds' | 'reads';

export interface Asker {
  readonly tenant: string;
  readonly role: Role;
  /** The name that stands beside what was read. */
  readonly who: string;
  /** Logs: the own one of a station, those of the shop of a foreman. Without it a station and a foreman see nothing. */
  readonly shops?: readonly string[];
  /** The one package that an adjuster was given. */
  readonly share?: string;
}

export interface Wanted {
  readonly asked: Asked;
  readonly tenant: string;
  /** This log alone; null for all of the tenant. */
  readonly log: string | null;
  readonly share?: string;
}

/** How far a role reaches: all of its tenant, its own logs, the one package that was shared, or nothing. */
type Reach = 'tenant' | 'own' | 'share' | 'nothing';

const NOTHING = {
  records: 'nothing',
  bodies: 'nothing',
  live: 'nothing',
  package: 'nothing',
  assessments: 'nothing',
  holds: 'nothing',
  reads: 'nothing',
} as const satisfies Record<Asked, Reach>;

const MAY: Readonly<Record<Role, Readonly<Record<Asked, Reach>>>> = {
  station: { ...NOTHING, records: 'own', bodies: 'own', package: 'own' },
  foreman: { ...NOTHING, records: 'own', live: 'own', package: 'own', assessments: 'own' },
  auditor: {
    ...NOTHING,
    records: 'tenant',
    live: 'tenant',
    package: 'tenant',
    assessments: 'tenant',
    holds: 'tenant',
    reads: 'tenant',
  },
  adjuster: { ...NOTHING, package: 'share' },
  // Whoever runs the machine can read the bodies, and all that follows from them. A table that denied it would not be true.
  operator: { ...NOTHING, records: 'tenant', bodies: 'tenant', holds: 'tenant', reads: 'tenant' },
};

export function mayAsk(asker: Asker, { asked, tenant, log, share }: Wanted): boolean {
  if (asker.tenant !== tenant) return false;
  switch (MAY[asker.role][asked]) {
    case 'tenant':
      return true;
    case 'own':
      return log !== null && asker.shops?.includes(log) === true;
    case 'share':
      return share !== undefined && share === asker.share;
    case 'nothing':
      return false;
  }
}
