import { verifyRecord } from '../../../src/evidence/verify.ts';
import { logOf, seal, station, trusting, wholeJob } from '../../evidence/sample-job.ts';
import type { Measurement } from '../measurement.ts';

/** Turns every single bit of a whole record, one after another; none may go unseen. */
export const everyBit: Measurement = {
  name: 'every-bit',
  what: 'every single bit of a record turned: each must be seen [step=1]',
  run({ number, progress }) {
    const bytes = seal(logOf(wholeJob()));
    const trust = trusting(station);
    const bits = bytes.length * 8;
    const step = number('step', 1);
    const seen = { rejected: 0, unreadable: 0 };
    const missed: number[] = [];
    for (let bit = 0; bit < bits; bit += step) {
      const copy = Buffer.from(bytes);
      copy[bit >> 3] = (copy[bit >> 3] ?? 0) ^ (1 << (bit & 7));
      const { verdict } = verifyRecord(copy, trust);
      if (verdict === 'rejected' || verdict === 'unreadable') seen[verdict]++;
      else missed.push(bit);
      progress(bit / bits, `${missed.length} unseen`);
    }
    return [
      `record of ${bytes.length} bytes: ${seen.rejected} turned bits rejected, ${seen.unreadable} no longer readable as a record`,
      missed.length === 0 ? 'none went unseen' : `UNSEEN: bits ${missed.slice(0, 20).join(', ')}`,
    ];
  },
};
