/** What verification names: its checks, how a technician signed, and the kinds of texts that can be withheld. */
import type { JobRecord } from '../../evidence/record.ts';
import type { PersonalKind } from '../../personal.ts';
import { phrases } from '../../words/catalogue.ts';

/** By the name that a check has in code, which is the English one. */
export const CHECK_NAMES: Readonly<Record<string, string>> = phrases({
  contents: 'contents',
  'judged again': 'judged again',
  completeness: 'completeness',
  'order of work': 'order of work',
  signatures: 'signatures',
  signer: 'signer',
  log: 'log',
  clock: 'clock',
  witnesses: 'witnesses',
  'trusted time': 'trusted time',
  files: 'files',
  records: 'records',
  'one history': 'one history',
  'same log': 'same log',
  since: 'since',
  impacts: 'impacts',
  times: 'times',
  made: 'made',
  paper: 'paper',
  papers: 'papers',
});

export const TECHNICIAN_SIGNATURE: Readonly<Record<JobRecord['technicianSignature'], string>> = phrases({
  given: 'the technician signed with a key of his own',
  'no-key': 'the technician has no key of his own',
  'not-given': 'the technician has a key and did NOT sign',
  'shop-does-without': "this shop does without technicians' signatures",
});

export const PERSONAL_WORDS: Readonly<Record<PersonalKind, string>> = phrases({
  plate: 'plate',
  vin: 'vin',
  vehicle: 'vehicle',
  fleet: 'fleet',
  customer: 'customer',
  complaint: 'complaint',
  person: 'person',
  note: 'note',
});
