import { z } from 'zod';

/** How an old plug looks; one class a plug, the gravest that fits. */
export const conditionSchema = z.enum([
  'normal',
  'reddish',
  'sooty',
  'fuel-wet',
  'oily',
  'ash',
  'worn',
  'glazed',
  'bridged',
  'metal-beads',
  'overheated',
  'pre-ignition',
  'detonation',
]);
export type Condition = z.infer<typeof conditionSchema>;

/** What is broken on an old plug, beside how it looks. */
export const damageSchema = z.enum([
  'cracked-insulator',
  'loose-centre',
  'broken-ground',
  'broken-shell',
  'bent-electrode',
  'flashover',
  'broken-tip',
]);
export type Damage = z.infer<typeof damageSchema>;

export const threadStateSchema = z.enum(['sound', 'dirty', 'damaged']);
export type ThreadState = z.infer<typeof threadStateSchema>;
