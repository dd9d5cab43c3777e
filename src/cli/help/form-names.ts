/** Names of the forms that "plugmark schema" prints beside those of the answers. The help offers them without loading the forms. */
export const FORM_NAMES = [
  'record',
  'record-file',
  'log-entry',
  'station-entry',
  'work-order',
  'station',
  'trust-list',
] as const;
export type FormName = (typeof FORM_NAMES)[number];
