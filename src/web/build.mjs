// Makes the page that verifies: one file without anything around it, from the program's own sources.
import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { constants, zstdCompressSync } from 'node:zlib';
import { transform } from 'esbuild';
import { scriptOf } from './bundle.mjs';
import { packedWords } from './words.mjs';

const read = (name) => readFileSync(new URL(name, import.meta.url), 'utf8');
const hash = (text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

/** What the page reads its program by. Node itself may not read TypeScript. */
const { code: base91 } = await transform(read('verify/base91.ts'), { loader: 'ts' });
const { toBase91 } = await import(`data:text/javascript,${encodeURIComponent(base91)}`);

/** The page as a text. The same sources give the same bytes. */
export async function verifyPage() {
  const main = await scriptOf('src/web/verify/main.ts', { judges: false });
  const worker = await scriptOf('src/web/verify/worker.ts');
  const script = main.text;
  const page = {
    text: read('verify/page.html'),
    sources: [fileURLToPath(new URL('verify/page.html', import.meta.url))],
  };
  const { code: style } = await transform(read('verify/page.css'), { loader: 'css', minify: true });
  const policy = [
    "default-src 'none'",
    `script-src ${hash(script)}`,
    `style-src ${hash(style)}`,
    'worker-src blob:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
  const { version } = JSON.parse(read('../../package.json'));
  return [
    ['content="policy"', `content="${policy}"`],
    ['plugmark version', `plugmark ${version}`],
    ['<style></style>', `<style>${style}</style>`],
    [
      '<template id="words">',
      `<template id="words">${packed(JSON.stringify(await packedWords([main, worker, page])))}`,
    ],
    ['<template id="worker">', `<template id="worker">${packed(worker.text)}`],
    ['<script></script>', `<script>${script}</script>`],
  ].reduce(filledIn, page.text);
}

/** The judge of a closed edition repeats much of the program a megabyte away, further than gzip sees: a fifth of the page. */
const SMALLEST = {
  [constants.ZSTD_c_compressionLevel]: 22,
  [constants.ZSTD_c_windowLog]: 22,
  [constants.ZSTD_c_contentSizeFlag]: 1,
};

function packed(text) {
  return toBase91(zstdCompressSync(text, { params: SMALLEST }));
}

function filledIn(page, [place, content]) {
  const parts = page.split(place);
  if (parts.length !== 2) throw new Error(`the page has ${parts.length - 1} places for ${place}`);
  return parts.join(content);
}

const OUT = new URL('../../dist/src/web/', import.meta.url);
mkdirSync(OUT, { recursive: true });
writeFileSync(new URL('verify.html', OUT), await verifyPage());
