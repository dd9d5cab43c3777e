import { fixed } from '../words/catalogue.ts';

/** Units of torque by their UCUM codes. Torque never becomes energy, although both are newton times metre. */
export type TorqueUnit = 'N.m' | '[ft_i].[lbf_av]' | '[in_i].[lbf_av]' | 'kgf.m' | 'kgf.cm';

/** Pound-force: 0.453 592 37 kg (pound) times 9.806 65 m/s² (standard gravity), both exact by definition. */
const POUND_FORCE_N = 4.4482216152605;
const STANDARD_GRAVITY = 9.80665;

/** Newton metres in one of each unit; exact by definition (inch 25.4 mm, foot 12 in), rounded only to a double. */
const NEWTON_METRES_IN: Readonly<Record<TorqueUnit, number>> = {
  'N.m': 1,
  '[ft_i].[lbf_av]': POUND_FORCE_N * 0.3048,
  '[in_i].[lbf_av]': POUND_FORCE_N * 0.0254,
  'kgf.m': STANDARD_GRAVITY,
  'kgf.cm': STANDARD_GRAVITY / 100,
};

/** A torque in `unit`, in N·m. */
export function newtonMetres(figure: number, unit: TorqueUnit): number {
  return figure * NEWTON_METRES_IN[unit];
}

/** A torque in N·m, in `unit`. */
export function fromNewtonMetres(nm: number, unit: TorqueUnit): number {
  return nm / NEWTON_METRES_IN[unit];
}

/** `25.00 N·m`. */
export function formatTorque(nm: number, decimals = 2): string {
  return `${fixed(nm, decimals)} N·m`;
}
