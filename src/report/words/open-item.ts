/** What still stands between a job and its end. */
import type { OpenItem, OpenKind } from '../../job/open-item.ts';
import { w } from '../../words/catalogue.ts';
import { featuresText } from './feature.ts';
import { replacementText } from './gap-step.ts';

export const OPEN_WORDS: {
  readonly [K in OpenKind]: (item: Extract<OpenItem, { readonly kind: K }>) => string;
} = {
  'old-plug-not-read': () => w`old plug not read`,
  'new-plug-not-checked': () => w`new plug not checked`,
  'new-plug-differs': ({ features }) => w`the new plug differs in ${featuresText(features)}`,
  'plug-to-be-replaced': (item) => w`plug to be replaced: ${replacementText(item)}`,
  'gap-not-measured': () => w`gap not measured`,
  'gap-not-proven': () => w`gap not proven`,
  'no-torque': () => w`no torque yet`,
  'torque-not-proven': () => w`torque not proven`,
  'torque-in-question': () => w`open question about its torque`,
  'windows-not-confirmed': () => w`windows not confirmed`,
  'before-removal-not-attested': () => w`steps before removal not confirmed`,
  'fitting-not-attested': () => w`steps before fitting not confirmed`,
  'afterwards-not-attested': () => w`steps after fitting not confirmed`,
  'question-not-answered': ({ pull }) => w`pull ${pull}: question not answered`,
  'declared-void': () => w`declared void`,
};

/** Without the cylinder that it is about. The cast: each kind has the words of its own kind, which the compiler cannot follow. */
export function openWhat(item: OpenItem): string {
  const words = OPEN_WORDS[item.kind] as (of: OpenItem) => string;
  return words(item);
}

export const openItemText = (item: OpenItem): string =>
  'cylinder' in item ? w`cylinder ${item.cylinder}: ${openWhat(item)}` : openWhat(item);

export const openItemsText = (items: readonly OpenItem[]): string => items.map(openItemText).join('; ');
