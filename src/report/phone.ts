/** Telephone numbers in free text: somebody's, and nobody else's business. */

/** With a trunk or country code in front, or in the groups of 3, 3 and 4 of North America; seven digits and more. */
const NUMBER =
  /(?<![\p{L}\p{N}.,])(?:(?:\+|\(0|0)(?:[\s()/.-]{0,2}\d){6,14}|\(?\d{3}\)?[-. ]\d{3}[-. ]\d{4})(?![\p{L}\p{N}])/gu;

const WITHHELD_NUMBER = '(telephone number withheld)';

export const hasPhoneNumber = (text: string): boolean => text.search(NUMBER) >= 0;

export const withoutPhoneNumbers = (text: string): string => text.replace(NUMBER, WITHHELD_NUMBER);
