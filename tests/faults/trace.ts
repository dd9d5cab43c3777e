/** What a program wrote and brought to the disk, in its order, as `strace -y -xx` saw it; and what a power cut may leave of it. */
import { mkdirSync, readFileSync, utimesSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import type { Random } from '../../sim/random.ts';

export const TRACED = 'openat,pwrite64,write,fsync,fdatasync,ftruncate,unlink,rename';

type Step =
  | { readonly do: 'create' | 'unlink' | 'sync'; readonly file: string }
  | { readonly do: 'write'; readonly file: string; readonly at: number; readonly bytes: Buffer }
  | { readonly do: 'truncate'; readonly file: string; readonly size: number }
  | { readonly do: 'rename'; readonly file: string; readonly to: string }
  | { readonly do: 'say'; readonly text: string };

export type Trace = readonly Step[];

const bytesIn = (hex: string): Buffer => Buffer.from(hex.replaceAll('\\x', ''), 'hex');
const textIn = (hex: string): string => bytesIn(hex).toString('utf8');
/** A file that lost its name is marked by strace. */
const pathIn = (hex: string): string => textIn(hex).replace(/ \(deleted\)$/, '');

const CALL = /^(\w+)\((.*)\) += (-?\d+)/;
const TARGET = /^\d+<([^>]*)>/;

/** Only what lies in the folder, and what was said on the standard output. */
export function traceOf(file: string, folder: string): Trace {
  const steps: Step[] = [];
  const there = new Set<string>();
  const ends = new Map<string, number>();
  const inside = (path: string) => path === folder || path.startsWith(`${folder}/`);
  for (const line of readFileSync(file, 'latin1').split('\n')) {
    const [, call, args = '', returned] = CALL.exec(line) ?? [];
    if (call === undefined || Number(returned) < 0) continue;
    if (call === 'openat') {
      const path = textIn(/"([^"]*)"/.exec(args)?.[1] ?? '');
      if (!inside(path) || !args.includes('O_CREAT')) continue;
      ends.set(path, 0);
      if (!there.has(path)) steps.push({ do: 'create', file: path });
      there.add(path);
      continue;
    }
    if (call === 'unlink' || call === 'rename') {
      const [path = '', to = ''] = [...args.matchAll(/"([^"]*)"/g)].map(([, hex = '']) => textIn(hex));
      if (!inside(path)) continue;
      there.delete(path);
      if (call === 'unlink') steps.push({ do: 'unlink', file: path });
      else steps.push({ do: 'rename', file: path, to });
      if (call === 'rename') there.add(to);
      continue;
    }
    const fd = Number.parseInt(args, 10);
    const path = pathIn(TARGET.exec(args)?.[1] ?? '');
    const data = /"([^"]*)"/.exec(args)?.[1] ?? '';
    if (call === 'write' && fd === 1) steps.push({ do: 'say', text: textIn(data) });
    if (!inside(path)) continue;
    if (call === 'fsync' || call === 'fdatasync') steps.push({ do: 'sync', file: path });
    else if (call === 'ftruncate')
      steps.push({ do: 'truncate', file: path, size: Number(/, (\d+)/.exec(args)?.[1]) });
    else if (call === 'pwrite64')
      steps.push({ do: 'write', file: path, at: Number(/, (\d+)$/.exec(args)?.[1]), bytes: bytesIn(data) });
    else if (call === 'write') {
      const at = ends.get(path) ?? 0;
      const bytes = bytesIn(data);
      steps.push({ do: 'write', file: path, at, bytes });
      ends.set(path, at + bytes.length);
    }
  }
  return steps;
}

export const saidBefore = (trace: Trace, cut: number): string =>
  trace
    .slice(0, cut)
    .map((step) => (step.do === 'say' ? step.text : ''))
    .join('');

const SECTOR = 512;

/** One file from its making to its end, whatever it is called meanwhile. */
interface Content {
  readonly steps: { readonly step: Extract<Step, { do: 'write' | 'truncate' }>; synced: boolean }[];
}

/**
 * The folder as a disk may hold it when the power goes behind so many steps. What was brought to the disk is there; of what
 * was not, any sector may be there or not, and of names that were made or taken away the first ones.
 */
export function imageOf(trace: Trace, cut: number, random: Random, folder: string, to: string): void {
  const contents = new Map<string, Content>();
  const names: { readonly change: (names: Map<string, Content>) => void; synced: boolean }[] = [];
  const at = (file: string): Content => {
    const there = contents.get(file);
    if (there !== undefined) return there;
    const fresh: Content = { steps: [] };
    contents.set(file, fresh);
    return fresh;
  };
  for (const step of trace.slice(0, cut)) {
    if (step.do === 'write' || step.do === 'truncate') at(step.file).steps.push({ step, synced: false });
    else if (step.do === 'create') {
      const content: Content = { steps: [] };
      contents.set(step.file, content);
      names.push({ change: (all) => void all.set(step.file, content), synced: false });
    } else if (step.do === 'unlink') {
      contents.delete(step.file);
      names.push({ change: (all) => void all.delete(step.file), synced: false });
    } else if (step.do === 'rename') {
      const content = at(step.file);
      contents.delete(step.file);
      contents.set(step.to, content);
      names.push({
        change: (all) => {
          all.delete(step.file);
          all.set(step.to, content);
        },
        synced: false,
      });
    } else if (step.do === 'sync') {
      for (const one of contents.get(step.file)?.steps ?? []) one.synced = true;
      // A journal that is brought to the disk takes the changes of names before it along.
      for (const one of names) one.synced = true;
    }
  }
  const pending = names.filter(({ synced }) => !synced);
  const lost = pending.slice(Math.floor(random.uniform(0, pending.length + 1)));
  const left = new Map<string, Content>();
  for (const name of names) if (!lost.includes(name)) name.change(left);
  const share = [0, 0.2, 0.5, 0.8, 1][Math.floor(random.uniform(0, 5))] ?? 1;
  for (const [path, content] of left) {
    const file = join(to, path.slice(folder.length));
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(
      file,
      basename(path).endsWith('-shm') ? Buffer.alloc(0) : bytesLeft(content, share, random),
    );
    utimesSync(file, 1, 1);
  }
}

function bytesLeft({ steps }: Content, share: number, random: Random): Buffer {
  const ends = steps.map(({ step }) => (step.do === 'write' ? step.at + step.bytes.length : step.size));
  const bytes = Buffer.alloc(Math.max(0, ...ends));
  let size = 0;
  const put = (from: number, some: Buffer) => {
    some.copy(bytes, from);
    size = Math.max(size, from + some.length);
  };
  for (const { step, synced } of steps) {
    if (step.do === 'truncate') {
      if (!synced && !random.chance(share)) continue;
      if (step.size < size) bytes.fill(0, step.size, size);
      size = step.size;
    } else if (synced) put(step.at, step.bytes);
    else
      for (let i = 0; i < step.bytes.length; ) {
        const end = Math.min(step.bytes.length, i + SECTOR - ((step.at + i) % SECTOR));
        if (random.chance(share)) put(step.at + i, step.bytes.subarray(i, end));
        i = end;
      }
  }
  return bytes.subarray(0, size);
}
