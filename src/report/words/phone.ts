/** While somebody types what looks like a telephone number. */
export const PHONE_NOTE =
  'This looks like a telephone number. Papers and shared records leave it out; the log contains it.';
