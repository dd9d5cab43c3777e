#!/usr/bin/env node
// React's development build keeps every frame's timings for ever; the choice is made when it is first loaded.
process.env['NODE_ENV'] ??= 'production';
const { endWithReader } = await import('./terminal/closed-pipe.ts');
endWithReader();
const { main } = await import('./main.ts');
process.exitCode = await main(process.argv);
