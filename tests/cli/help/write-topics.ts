/** `npm run docs`: fills the marked places in the topics of the manual. */
import { readFileSync, writeFileSync } from 'node:fs';
import { TOPICS, topicFile } from '../../../src/cli/help/topics.ts';
import { filled } from './generated.ts';

for (const topic of TOPICS) {
  const before = readFileSync(topicFile(topic), 'utf8');
  const after = filled(before);
  if (after === before) continue;
  writeFileSync(topicFile(topic), after);
  process.stdout.write(`${topic}.md\n`);
}
