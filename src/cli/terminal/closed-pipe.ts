import { fileProblem } from '../../files/file-problem.ts';
import { w } from '../../words/catalogue.ts';
import { EXIT, problemText } from './exit.ts';

/**
 * Nobody reads the output any more (`plugmark jobs | head`): the program ends without a word. A job that is being worked on
 * hears of it as of any other signal to leave, writes down what it holds, and can be taken up again. Where the output goes to a
 * file and the disk is full, that is said.
 */
export function endWithReader(): void {
  for (const stream of [process.stdout, process.stderr])
    stream.on('error', (fault: NodeJS.ErrnoException) => {
      const problem = fileProblem(fault);
      if (problem !== null && stream === process.stdout) {
        process.stderr.write(problemText({ ...problem, where: w`the output` }));
        process.exit(EXIT.badInput);
      }
      if (fault.code !== 'EPIPE') throw fault;
      if (process.listenerCount('SIGTERM') > 0) process.emit('SIGTERM');
      else process.exit();
    });
}
