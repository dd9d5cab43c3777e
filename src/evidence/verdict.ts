/** What a verification comes to. Exit codes and words for it are in `report/verification.ts`. */

/**
 * The gravest first. `rejected`: not authentic. `unreadable`: the file is no JWS object and does not begin like one.
 * `newer`: a later version of the program made the file in a form that this one cannot read, so that nothing was checked.
 * `untrusted`: authentic, but the station's key is not trusted. `other-rules`: authentic, but judged by rules that this
 * program does not know, so that nothing could be judged again. `incomplete`: as its station sealed it, but not all of the
 * job is done. `unproven`: authentic and complete, but figures of it were replayed or simulated, so that it proves nothing.
 * `authentic`: every check passed, and each figure is proven by an instrument or attested by a person.
 */
export const VERDICTS = [
  'rejected',
  'unreadable',
  'newer',
  'untrusted',
  'other-rules',
  'incomplete',
  'unproven',
  'authentic',
] as const;
export type Verdict = (typeof VERDICTS)[number];

/** How a package came out: unfinished and unproven jobs are no fault of it, and without a readable index it is no package. */
export type PackageVerdict = Exclude<Verdict, 'incomplete' | 'unproven' | 'unreadable'>;
