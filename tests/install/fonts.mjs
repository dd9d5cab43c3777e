// The fonts that papers embed: Arimo and Cousine (SIL Open Font License), cut down to Latin, Greek, Cyrillic and the signs of
// measurement. `node tests/install/fonts.mjs` cuts them anew; tests/install/fonts.test.ts holds them against the packages.
import { readFile, writeFile } from 'node:fs/promises';
import subsetFont from 'subset-font';

const ROOT = new URL('../../', import.meta.url);
const PACKAGES = new URL('node_modules/@expo-google-fonts/', ROOT);
export const FOLDER = new URL('src/report/fonts/', ROOT);

/** Latin with its extensions, marks, Greek, Cyrillic, Greek extended, punctuation, currency, letterlike, arrows, mathematics, boxes. */
const RANGES = [
  [0x20, 0x7e],
  [0xa0, 0x24f],
  [0x2b0, 0x2ff],
  [0x300, 0x36f],
  [0x370, 0x3ff],
  [0x400, 0x52f],
  [0x1e00, 0x1fff],
  [0x2000, 0x206f],
  [0x2070, 0x20bf],
  [0x2100, 0x22ff],
  [0x25a0, 0x25ff],
  [0x2713, 0x2713],
  [0xfffd, 0xfffd],
];
const characters = (ranges) =>
  ranges
    .flatMap(([from, to]) => Array.from({ length: to - from + 1 }, (_, i) => String.fromCodePoint(from + i)))
    .join('');

const FACES = [
  { name: 'arimo-regular.ttf', from: 'arimo/400Regular/Arimo_400Regular.ttf', keeps: RANGES },
  { name: 'arimo-bold.ttf', from: 'arimo/700Bold/Arimo_700Bold.ttf', keeps: RANGES },
  // For digests and thumbprints alone.
  { name: 'cousine-regular.ttf', from: 'cousine/400Regular/Cousine_400Regular.ttf', keeps: [[0x20, 0x7e]] },
];

/** The files of the folder, by name, as the packages give them. */
export async function fonts() {
  const files = {};
  for (const { name, from, keeps } of FACES)
    files[name] = await subsetFont(await readFile(new URL(from, PACKAGES)), characters(keeps), {
      targetFormat: 'truetype',
      noHinting: true,
      noLayoutClosure: true,
    });
  files['LICENSE'] = await readFile(new URL('arimo/LICENSE_FONT', PACKAGES));
  return files;
}

if (process.argv[1] === new URL(import.meta.url).pathname)
  for (const [name, bytes] of Object.entries(await fonts())) await writeFile(new URL(name, FOLDER), bytes);
