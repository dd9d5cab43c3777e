// Runs `plugmark verify --json` of a built program on files of a folder, one after the other in one process.
// Arguments: folder of the built program, folder of the artefacts, JSON list of {path, options}. Prints a line of JSON each.
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const [dist, folder, list] = process.argv.slice(2);
const { verify } = await import(pathToFileURL(join(dist, 'src/cli/evidence/verify.js')).href);
const write = process.stdout.write.bind(process.stdout);

for (const { path, options } of JSON.parse(list)) {
  let text = '';
  process.stdout.write = (chunk) => {
    text += chunk;
    return true;
  };
  const given = Object.entries(options).map(([name, file]) => [name, join(folder, file)]);
  const said = await verify(join(folder, path), { json: true, ...Object.fromEntries(given) }).then(
    (exit) => ({ exit, answer: JSON.parse(text) }),
    (fault) => ({ fault: String(fault?.stack ?? fault) }),
  );
  process.stdout.write = write;
  write(`${JSON.stringify(said)}\n`);
}
