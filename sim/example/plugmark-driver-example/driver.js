// A driver for an invented wrench on a serial port, as a pattern for real ones. No profile can describe it: each byte of a
// frame is masked with a figure that depends on the number of the frame.
//
//   a5  number  value (2 bytes, little, masked)  sum of the four bytes before
//
// A value of 7fff means that the wrench has none.

const HEAD = 0xa5;
const SIZE = 5;
const NO_VALUE = 0x7fff;

const maskOf = (number) => ((number * 37) ^ 0x5c) & 0xff;

/** The reading in a frame; null where its sum is wrong. */
function readingOf(frame) {
  const sum = (frame[0] + frame[1] + frame[2] + frame[3]) & 0xff;
  if (frame[0] !== HEAD || frame[4] !== sum) return null;
  const mask = maskOf(frame[1]);
  const value = ((frame[3] ^ mask) << 8) | (frame[2] ^ mask);
  if (value === NO_VALUE) return { value: null };
  return { value: value > 0x7fff ? value - 0x10000 : value };
}

function session() {
  let waiting = [];
  return {
    take(bytes) {
      waiting.push(...bytes);
      const readings = [];
      const lost = [];
      while (waiting.length > 0) {
        if (waiting[0] !== HEAD) lost.push(waiting.shift());
        else if (waiting.length < SIZE) break;
        else {
          const reading = readingOf(waiting);
          if (reading === null) lost.push(waiting.shift());
          else {
            if (lost.length > 0) readings.push({ raw: Uint8Array.from(lost.splice(0)) });
            readings.push(reading);
            waiting = waiting.slice(SIZE);
          }
        }
      }
      if (lost.length > 0) readings.push({ raw: Uint8Array.from(lost) });
      return readings;
    },
  };
}

export default {
  contract: 'plugmark/driver/1',
  title: 'Invented wrench with a running mask',
  quantity: 'torque',
  exponent: -2,
  resolution: 1,
  samplingFunction: 'instantaneous',
  updateIntervalMs: 20,
  link: { kind: 'serial', baud: 115200 },
  examples: [
    { hex: 'a5005c5c5d', shows: [0] },
    { hex: 'a5019f70b5', shows: [25.34] },
    { hex: 'a50269ebfb', shows: [-6.41] },
    { hex: 'a503cc4cc0', shows: [null] },
  ],
  session,
};
