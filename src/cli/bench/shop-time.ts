/** Times of day as the clock of the shop shows them; the record keeps UTC. */

/** `14:03:12`. */
export const timeOfDay = (at: string): string => {
  const local = new Date(at);
  return [local.getHours(), local.getMinutes(), local.getSeconds()]
    .map((part) => String(part).padStart(2, '0'))
    .join(':');
};
