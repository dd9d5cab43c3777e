/** Work on all cores: each thread takes some items at a time and answers with what came of them. */
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';

interface Threads {
  /** The file of a thread: in the build, and in the source. */
  readonly built: URL;
  readonly source: URL;
  readonly workerData: unknown;
  /** Enough work for a thread to be worth a message, little enough for a bar to move. */
  readonly batch: number;
}

/** Hands the items out to as many threads as there are cores; `take` gets each answer. The first fault of a thread ends it all. */
export async function onAllCores(
  threads: Threads,
  items: readonly unknown[],
  take: (answer: unknown) => void,
): Promise<void> {
  const { batch: size } = threads;
  let next = 0;
  const count = Math.min(availableParallelism(), Math.ceil(items.length / size));
  const workers = Array.from({ length: count }, () => newWorker(threads));
  const work = (worker: Worker) =>
    new Promise<void>((resolve, reject) => {
      const more = () => {
        const batch = items.slice(next, next + size);
        next += batch.length;
        if (batch.length > 0) worker.postMessage(batch);
        else resolve();
      };
      worker.on('message', (answer: unknown) => {
        try {
          take(answer);
          more();
        } catch (fault) {
          reject(fault);
        }
      });
      worker.on('error', reject);
      more();
    });
  try {
    await Promise.all(workers.map(work));
  } finally {
    await Promise.all(workers.map((worker) => worker.terminate()));
  }
}

/** The build renames sources; run from the source, a thread has to load the loader of this one itself. */
function newWorker({ built, source, workerData }: Threads): Worker {
  if (!import.meta.url.endsWith('.ts')) return new Worker(built, { workerData });
  const code = `import('tsx/esm/api').then(({ register }) => { register(); return import('${source.href}'); })`;
  return new Worker(code, { workerData, eval: true });
}
