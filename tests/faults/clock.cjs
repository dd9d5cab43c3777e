// Loaded in front of the program: a wall clock that jumps, forward and back, as the environment says.
const jumps = JSON.parse(process.env.FAULTS_CLOCK ?? '[]');
const real = Date.now;
const start = real();
const offset = () => {
  let sum = 0;
  for (const [afterMs, byMs] of jumps) if (real() - start >= afterMs) sum += byMs;
  return sum;
};
Date.now = () => real() + offset();
const RealDate = Date;
globalThis.Date = class extends RealDate {
  constructor(...args) {
    if (args.length === 0) super(Date.now());
    else super(...args);
  }
};
globalThis.Date.now = () => real() + offset();
