// Runs command lines one after the other in one process, as the program would; says of each how it ended.
import { main } from '../../dist/src/cli/main.js';

let text = '';
const take = (chunk) => {
  if (text.length < 1_000_000) text += String(chunk);
  return true;
};
process.stdout.write = take;
process.stderr.write = take;
process.stdin.destroy();

process.on('message', async ({ argv }) => {
  text = '';
  const startMs = performance.now();
  let code;
  try {
    code = await main(['node', 'plugmark', ...argv]);
  } catch (error) {
    code = 70;
    text += `\nthrown: ${error?.stack ?? error}`;
  }
  process.send({ code, text, ms: performance.now() - startMs, mb: process.memoryUsage().rss / 1e6 });
});
process.on('unhandledRejection', (error) => {
  process.send({ code: 70, text: `unhandled: ${error?.stack ?? error}`, ms: 0, mb: 0 });
});
