// The decimal floating point numbers of IEEE 11073-20601: a mantissa and a power of ten, both in two's complement.
// FLOAT has 24 and 8 bits, SFLOAT 12 and 4. Five mantissas at exponent 0 mean no number (clause 5.4.2 of 2014's text).

/** `mantissa · 10^exponent`; kept apart, because a decimal figure would lose its last digits in a binary one. */
export interface Decimal {
  readonly mantissa: number;
  readonly exponent: number;
}

export type MedicalFloat =
  | Decimal
  /** `not-a-number`, `not-at-this-resolution`, infinities and the reserved code: there is no value. */
  | { readonly none: 'nan' | 'nres' | '+inf' | '-inf' | 'reserved' };

const NONE = ['+inf', 'nan', 'nres', 'reserved', '-inf'] as const;

/** `raw` is the unsigned 32 bit word. */
export const medicalFloat32 = (raw: number): MedicalFloat => split(raw, 24, 8);

/** `raw` is the unsigned 16 bit word. */
export const medicalFloat16 = (raw: number): MedicalFloat => split(raw, 12, 4);

function split(raw: number, mantissaBits: number, exponentBits: number): MedicalFloat {
  const mantissaSpan = 2 ** mantissaBits;
  const unsigned = raw % mantissaSpan;
  const exponent = signed(Math.floor(raw / mantissaSpan), exponentBits);
  // The codes lie around the most negative mantissa: two below it in unsigned order, two above.
  const none = NONE[unsigned - (mantissaSpan / 2 - 2)];
  if (exponent === 0 && none !== undefined) return { none };
  return { mantissa: signed(unsigned, mantissaBits), exponent };
}

const signed = (value: number, bits: number) => (value >= 2 ** (bits - 1) ? value - 2 ** bits : value);
