/** The witness that is measured: a process of its own, so that its work is told from that of the logs that ask it. */
import { openWitnessFile } from '../../../db/witness.ts';
import { storeOf } from '../../../src/cli/witness/witness-folder.ts';
import { witnessServer } from '../../../src/serve/witness.ts';
import { witnessKeys } from '../../serve/witness-keys.ts';

const [path = '', kinds = '1'] = process.argv.slice(2);
const file = await openWitnessFile(path);
const server = await witnessServer(
  {
    store: storeOf(file),
    keys: witnessKeys('witness.example/one', 'b2').slice(0, Number(kinds)),
    nowS: () => Math.floor(Date.now() / 1000),
    heard: () => {},
  },
  { tls: null, requestsAMinute: 1e9, patienceMs: 10_000 },
);
process.send?.({ url: await server.listen({ host: '127.0.0.1', port: 0 }) });
process.on('message', () => {
  const { user, system } = process.cpuUsage();
  process.send?.({ cpuS: (user + system) / 1e6 });
});
