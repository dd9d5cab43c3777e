#!/usr/bin/env node
import { isNewEnough, oldNodeText } from './needed-node.ts';

// Nothing else is imported up there: on an old Node the native packages end the process before any line of ours runs.
if (isNewEnough(process.versions.node)) {
  // React's development build keeps every frame's timings for ever; the choice is made when it is first loaded.
  process.env['NODE_ENV'] ??= 'production';
  const { endWithReader } = await import('./terminal/closed-pipe.ts');
  endWithReader();
  const { main } = await import('./main.ts');
  process.exitCode = await main(process.argv);
} else {
  process.stderr.write(oldNodeText(process.versions.node));
  process.exitCode = 2;
}
