/** How an old plug looks and what that mostly comes from, in our own words; the reading never replaces a diagnosis. */
import type { Condition, Damage, ThreadState } from '../../plug/condition.ts';
import { phrases, w } from '../../words/catalogue.ts';

interface ConditionWords {
  readonly word: string;
  readonly looks: string;
  readonly causes: string;
  /** For the customer; empty where nothing is to be done. */
  readonly advice: string;
}

/** In the order of the list: the usual one first, the gravest last. */
export const CONDITIONS: Readonly<Record<Condition, ConditionWords>> = phrases({
  normal: {
    word: 'normal',
    looks: 'light grey to tan, little wear, perhaps some white powder',
    causes: 'a healthy cylinder and a plug that suits it',
    advice: '',
  },
  reddish: {
    word: 'reddish coat',
    looks: 'pink to brick red film on insulator and electrodes',
    causes: 'an additive in the fuel; no fault of the engine',
    advice: '',
  },
  sooty: {
    word: 'dry soot',
    looks: 'dull black, dry, comes off on the finger',
    causes: 'rich mixture, short trips, weak spark, too cold a plug, blocked air filter',
    advice: 'Have mixture, air filter and ignition checked.',
  },
  'fuel-wet': {
    word: 'wet with fuel',
    looks: 'damp, smells of fuel',
    causes: 'flooded, injector that leaks, no spark in this cylinder',
    advice: 'Have injector and ignition of this cylinder checked.',
  },
  oily: {
    word: 'wet with oil',
    looks: 'black, wet and slippery',
    causes: 'oil past rings, valve guides or seals, or through the crankcase vent',
    advice: 'Have the oil consumption looked into.',
  },
  ash: {
    word: 'ash',
    looks: 'pale crust on electrodes and insulator',
    causes: 'additives of oil or fuel that do not burn; oil consumption',
    advice: 'Have the oil consumption looked into.',
  },
  worn: {
    word: 'worn',
    looks: 'electrodes rounded, gap grown wide',
    causes: 'in use beyond its life',
    advice: 'Change the plugs sooner next time.',
  },
  glazed: {
    word: 'glazed',
    looks: 'shiny, glassy or spotted insulator',
    causes: 'deposits melted on by hard acceleration after a long slow time',
    advice: 'Have the heat range of the plug checked.',
  },
  bridged: {
    word: 'bridged',
    looks: 'a lump of deposit closes the gap',
    causes: 'oil or soot that came loose in the chamber',
    advice: 'Have the oil consumption looked into.',
  },
  'metal-beads': {
    word: 'beads of metal',
    looks: 'small bright beads on electrodes or insulator',
    causes: 'lead in the fuel, or metal from piston or valve: look into the cylinder',
    advice: 'Have the inside of this cylinder looked at.',
  },
  overheated: {
    word: 'overheated',
    looks: 'chalk white insulator, dark specks, electrodes burnt blue',
    causes: 'a plug that was loose, too hot a plug, lean mixture, timing, cooling',
    advice: 'Have mixture, timing and cooling checked.',
  },
  'pre-ignition': {
    word: 'melted',
    looks: 'electrode melted or gone, insulator blistered',
    causes: 'ignition by a hot spot before the spark; the piston may be hurt: look into the cylinder',
    advice: 'Drive no further before the inside of this cylinder is looked at.',
  },
  detonation: {
    word: 'knocked to pieces',
    looks: 'insulator tip chipped, ground electrode broken without melting',
    causes: 'knocking: fuel, timing, load; or a gap set with force',
    advice: 'Have fuel, timing and the inside of this cylinder checked.',
  },
});

export const DAMAGE: Readonly<Record<Damage, { readonly words: string }>> = phrases({
  'cracked-insulator': { words: 'insulator cracked' },
  'loose-centre': { words: 'centre electrode loose' },
  'broken-ground': { words: 'ground electrode broken' },
  'broken-shell': { words: 'shell broken' },
  'bent-electrode': { words: 'electrode bent' },
  flashover: { words: 'burnt track down the outside' },
  'broken-tip': { words: 'fine tip broken off: scrap, look for it in the cylinder' },
});

export const THREADS: Readonly<Record<ThreadState, string>> = phrases({
  sound: 'sound',
  dirty: 'dirty: clean it before fitting',
  damaged: 'DAMAGED: stop and repair it first',
});

/** What many take for a fault. */
export const stainText = (): string => w`An even brown ring outside, just above the shell, is normal.`;
