/** Fonts of the machine, for scripts that the fonts of the papers do not have: Chinese, Japanese, Korean, Arabic and others. */
import { readdirSync, readFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { basename, join } from 'node:path';
import { characterSetOf, type FontFace, type OpenFont } from './character-set.ts';

export interface MachineFont extends FontFace {
  readonly name: string;
  readonly bytes: Buffer;
}

const FOLDERS = [
  '/usr/share/fonts',
  '/usr/local/share/fonts',
  join(homedir(), '.local/share/fonts'),
  '/System/Library/Fonts',
  '/Library/Fonts',
  'C:\\Windows\\Fonts',
];

/** Well-known ones of wide use, the better first: trying every font of a machine would take seconds. */
const KNOWN: readonly RegExp[] = [
  /^NotoSansCJK.*Regular\./i,
  /^NotoSans(CJK|SC|TC|JP|KR|Arabic|Hebrew|Thai|Devanagari|Armenian|Georgian)?-?(Regular|VF|\[.*)?\.(ttf|otf|ttc)$/i,
  /^DroidSansFallback/i,
  /^(wqy-|uming|ukai|ipag|takao|nanum|unfonts)/i,
  /^(msyh|msgothic|meiryo|malgun|simsun|yugoth)/i,
  /^(PingFang|Hiragino|AppleSDGothic|GeezaPro|STHeiti)/i,
  /^(DejaVuSans|FreeSans|arial|tahoma|segoeui|Arial Unicode)\.(ttf|otf)$/i,
];
const DEEPEST = 5;
const LARGEST_BYTES = 64 << 20;

let listed: readonly string[] | null = null;
const opened = new Map<string, MachineFont | null>();

/** The first font of this machine that has the character; null where none has it. */
export function machineFontFor(codePoint: number, create: OpenFont): MachineFont | null {
  listed ??= knownFiles(FOLDERS.flatMap((folder) => filesIn(folder, DEEPEST)));
  for (const file of listed) {
    const font = opened.has(file) ? (opened.get(file) ?? null) : open(file, create);
    opened.set(file, font);
    if (font?.characters.has(codePoint) === true) return font;
  }
  return null;
}

function knownFiles(files: readonly string[]): readonly string[] {
  const sorted = [...files].sort((a, b) => (a < b ? -1 : 1));
  const known = KNOWN.flatMap((pattern) => sorted.filter((file) => pattern.test(basename(file))));
  return [...new Set(known)];
}

function filesIn(folder: string, deep: number): readonly string[] {
  if (deep === 0) return [];
  try {
    return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
      const path = join(folder, entry.name);
      return entry.isDirectory() ? filesIn(path, deep - 1) : [path];
    });
  } catch {
    return [];
  }
}

function open(file: string, create: OpenFont): MachineFont | null {
  try {
    const bytes = readFileSync(file);
    const face = bytes.length > LARGEST_BYTES ? null : characterSetOf(bytes, create);
    return face && { name: file, bytes, ...face };
  } catch {
    return null;
  }
}
