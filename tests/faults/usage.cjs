// Preloaded into the program: at its end it writes down what it took.
const { writeFileSync } = require('node:fs');
const { isMainThread } = require('node:worker_threads');

const file = process.env['FAULTS_USAGE'];
if (file !== undefined && isMainThread)
  process.on('exit', () => {
    const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage();
    writeFileSync(
      file,
      JSON.stringify({ cpuMs: (userCPUTime + systemCPUTime) / 1000, peakMb: maxRSS / 1000 }),
    );
  });
