/**
 * When things happen in a simulation: a clock and a queue of tasks, either in real time or in virtual time that
 * jumps from task to task. Both run tasks in order of due time, ties in order of insertion, one per turn of the
 * event loop, so that promises waiting on one task have moved on before the next task runs.
 */

export interface Scheduler {
  /** Whole microseconds since an arbitrary origin; never goes back. */
  readonly nowUs: () => number;
  /** Runs `run` once, `us` microseconds from now and never within this call; the returned function cancels it. */
  readonly after: (us: number, run: () => void) => () => void;
}

/** A scheduler whose pending tasks can all be cancelled together. */
export interface TaskGroup extends Scheduler {
  readonly cancelAll: () => void;
}

/** Time that only passes when it is told to. */
export interface VirtualScheduler extends Scheduler {
  /** Runs until nothing is left to do; never ends while something repeats (a scan, for example). */
  readonly run: () => Promise<void>;
  /** Runs what falls due within `us` microseconds and leaves the clock at their end. */
  readonly runFor: (us: number) => Promise<void>;
  /**
   * Runs until `promise` settles and passes on its outcome. Throws when no task is left and the promise stays open for
   * `patienceMs` of real time, which is what a module being loaded, a file or a timer may take (default 15 s).
   */
  readonly runUntil: <T>(promise: Promise<T>, patienceMs?: number) => Promise<T>;
}

interface Task {
  readonly dueUs: number;
  readonly run: () => void;
}

const PATIENCE_MS = 15_000;
/** What a paced simulation catches up with; beyond it, it is late for good. */
const LATE_MS = 30;

const turn = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

function taskQueue() {
  const tasks: Task[] = [];
  return {
    add(nowUs: number, us: number, run: () => void): () => void {
      if (!Number.isFinite(us)) throw new RangeError(`a task needs a finite delay, not ${us}`);
      const task = { dueUs: nowUs + Math.max(0, Math.ceil(us)), run };
      let low = 0;
      let high = tasks.length;
      while (low < high) {
        const middle = (low + high) >>> 1;
        if ((tasks[middle]?.dueUs ?? 0) <= task.dueUs) low = middle + 1;
        else high = middle;
      }
      tasks.splice(low, 0, task);
      return () => {
        const at = tasks.indexOf(task);
        if (at >= 0) tasks.splice(at, 1);
      };
    },
    next: (): Task | undefined => tasks[0],
    take: (): Task | undefined => tasks.shift(),
  };
}

/** Real time. Holds one timer while tasks are pending and none otherwise, so an idle process can exit. */
export function realScheduler(): Scheduler {
  const queue = taskQueue();
  const nowUs = () => Math.floor(performance.now() * 1_000);
  let disarm = () => {};

  const arm = () => {
    disarm();
    disarm = () => {};
    const next = queue.next();
    if (next === undefined) return;
    const waitUs = next.dueUs - nowUs();
    if (waitUs > 0) {
      const timer = setTimeout(fire, Math.ceil(waitUs / 1_000));
      disarm = () => clearTimeout(timer);
    } else {
      const immediate = setImmediate(fire);
      disarm = () => clearImmediate(immediate);
    }
  };
  const fire = () => {
    const next = queue.next();
    try {
      if (next !== undefined && next.dueUs <= nowUs()) queue.take()?.run();
    } finally {
      arm();
    }
  };

  return {
    nowUs,
    after: (us, run) => {
      const cancel = queue.add(nowUs(), us, run);
      arm();
      return () => {
        cancel();
        arm();
      };
    },
  };
}

/**
 * `speed` times as fast as real time, starting at 0. The clock moves from task to task: where the machine stalls the
 * simulation is late, but no time is missing from it.
 */
export function pacedScheduler(speed: number): Scheduler {
  const queue = taskQueue();
  let nowUs = 0;
  /** Real time at which the simulation began, moved on by what it came late. */
  let beganMs = performance.now();
  let disarm = () => {};
  const arm = () => {
    disarm();
    disarm = () => {};
    const next = queue.next();
    if (next === undefined) return;
    const waitMs = beganMs + next.dueUs / 1_000 / speed - performance.now();
    if (waitMs > 0) {
      const timer = setTimeout(fire, waitMs);
      disarm = () => clearTimeout(timer);
    } else {
      if (waitMs < -LATE_MS) beganMs -= waitMs;
      const immediate = setImmediate(fire);
      disarm = () => clearImmediate(immediate);
    }
  };
  const fire = () => {
    const task = queue.take();
    try {
      nowUs = task?.dueUs ?? nowUs;
      task?.run();
    } finally {
      arm();
    }
  };
  return {
    nowUs: () => nowUs,
    after: (us, run) => {
      const cancel = queue.add(nowUs, us, run);
      arm();
      return () => {
        cancel();
        arm();
      };
    },
  };
}

/** Virtual time, starting at 0. */
export function virtualScheduler(): VirtualScheduler {
  const queue = taskQueue();
  let nowUs = 0;
  const after = (us: number, run: () => void) => queue.add(nowUs, us, run);

  const step = (): boolean => {
    const task = queue.take();
    if (task === undefined) return false;
    nowUs = task.dueUs;
    task.run();
    return true;
  };
  const runWhile = async (wanted: () => boolean, patienceMs: number): Promise<void> => {
    let idleSinceMs: number | null = null;
    await turn();
    while (wanted()) {
      if (step()) idleSinceMs = null;
      else {
        idleSinceMs ??= performance.now();
        if (performance.now() - idleSinceMs >= patienceMs) return;
      }
      await turn();
    }
  };

  return {
    nowUs: () => nowUs,
    after,
    run: () => runWhile(() => queue.next() !== undefined, 0),
    runFor: async (us) => {
      let ended = false;
      after(us, () => {
        ended = true;
      });
      await runWhile(() => !ended, 0);
    },
    runUntil: async (promise, patienceMs = PATIENCE_MS) => {
      let settled = false;
      const settle = () => {
        settled = true;
      };
      promise.then(settle, settle);
      await runWhile(() => !settled, patienceMs);
      if (!settled) throw new Error(`nothing left to run at ${nowUs} µs and the promise has not settled`);
      return promise;
    },
  };
}

/** A view of `scheduler` that remembers its own pending tasks. */
export function taskGroup(scheduler: Scheduler): TaskGroup {
  const pending = new Set<() => void>();
  return {
    nowUs: scheduler.nowUs,
    after: (us, run) => {
      const cancel = scheduler.after(us, () => {
        pending.delete(forget);
        run();
      });
      const forget = () => {
        pending.delete(forget);
        cancel();
      };
      pending.add(forget);
      return forget;
    },
    cancelAll: () => {
      for (const forget of [...pending]) forget();
    },
  };
}

/** Microseconds from `nowUs` to the next point of a grid of `periodUs` laid from `originUs`; more than 0. */
export function untilNext(nowUs: number, originUs: number, periodUs: number): number {
  return periodUs - ((nowUs - originUs) % periodUs);
}
