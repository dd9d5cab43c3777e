// A witness that dies after it wrote and before it answered: its line about the request comes between the two.

import { readKeyFile } from '../../dist/db/keyfile.js';
import { openWitnessFile } from '../../dist/db/witness.js';
import { keysOfWitness, storeOf } from '../../dist/src/cli/witness/witness-folder.js';
import { USUAL_LIMITS, witnessServer } from '../../dist/src/serve/witness.js';

const [path, key] = process.argv.slice(2);
const file = await openWitnessFile(path);
const server = await witnessServer(
  {
    store: storeOf(file),
    keys: keysOfWitness('witness.example/one', readKeyFile(key).value),
    nowS: () => 1_790_000_000,
    heard: () => process.kill(process.pid, 'SIGKILL'),
  },
  { ...USUAL_LIMITS, tls: null },
);
process.stdout.write(await server.listen({ host: '127.0.0.1', port: 0 }));
