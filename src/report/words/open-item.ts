/** What still stands between a job and its end. */
import type { OpenItem, OpenKind } from '../../job/open-item.ts';
import { featuresText } from './feature.ts';
import { replacementText } from './gap-step.ts';

export const OPEN_WORDS: {
  readonly [K in OpenKind]: (item: Extract<OpenItem, { readonly kind: K }>) => string;
} = {
  'old-plug-not-read': () => 'old plug not read',
  'new-plug-not-checked': () => 'new plug not checked',
  'new-plug-differs': ({ features }) => `the new plug differs in ${featuresText(features)}`,
  'plug-to-be-replaced': (item) => `plug to be replaced: ${replacementText(item)}`,
  'gap-not-measured': () => 'gap not measured',
  'gap-not-proven': () => 'gap not proven',
  'no-torque': () => 'no torque yet',
  'torque-not-proven': () => 'torque not proven',
  'torque-in-question': () => 'open question about its torque',
  'windows-not-confirmed': () => 'windows not confirmed',
  'before-removal-not-attested': () => 'steps before removal not confirmed',
  'fitting-not-attested': () => 'steps before fitting not confirmed',
  'afterwards-not-attested': () => 'steps after fitting not confirmed',
  'question-not-answered': ({ pull }) => `pull ${pull}: question not answered`,
  'declared-void': () => 'declared void',
};

/** Without the cylinder that it is about. The cast: each kind has the words of its own kind, which the compiler cannot follow. */
export function openWhat(item: OpenItem): string {
  const words = OPEN_WORDS[item.kind] as (of: OpenItem) => string;
  return words(item);
}

export const openItemText = (item: OpenItem): string =>
  'cylinder' in item ? `cylinder ${item.cylinder}: ${openWhat(item)}` : openWhat(item);

export const openItemsText = (items: readonly OpenItem[]): string => items.map(openItemText).join('; ');
