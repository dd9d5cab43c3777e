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
  const before = process.cpuUsage();
  let code;
  try {
    code = await main(['node', 'plugmark', ...argv]);
  } catch (error) {
    code = 70;
    text += `\nthrown: ${error?.stack ?? error}`;
  }
  send(code, before);
});
process.on('unhandledRejection', (error) => {
  text = `unhandled: ${error?.stack ?? error}`;
  send(70, process.cpuUsage());
});

function send(code, before) {
  const { user, system } = process.cpuUsage(before);
  // The peak since the process began: what is there after the answer says nothing of what the answer took.
  const peakMb = process.resourceUsage().maxRSS / 1000;
  process.send({ code, text, cpuMs: (user + system) / 1000, peakMb });
}
