/**
 * The logo of a shop: read once, made small and opaque, and written anew, so that nothing of the file but its picture gets into
 * a record.
 */

import { PNG } from 'pngjs';
import { readBytes } from '../../files/input.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';

const LARGEST_FILE = 4 << 20;
/** Of the file's own picture: to unpack more takes memory that a station may not have. */
const MOST_PIXELS = 4_000_000;
/** Of the picture on paper: 44 mm wide at 200 dots an inch. */
const WIDEST = 350;
const HIGHEST = 120;
/** As PNG; base64 of it is what a record takes. */
const LARGEST = 48 << 10;

interface Picture {
  readonly width: number;
  readonly height: number;
  /** Red, green, blue of each pixel. */
  readonly rgb: Uint8Array;
}

/** The logo in a file, as base64. */
export async function logoOf(file: string): Promise<string> {
  const bytes = await readBytes(file, w`logo`, LARGEST_FILE);
  const picture = pictureIn(Buffer.from(bytes));
  if (picture === null) throw new ProblemError(notALogo(file));
  let scale = Math.min(1, WIDEST / picture.width, HIGHEST / picture.height);
  for (;;) {
    const png = written(shrunk(picture, scale));
    if (png.length <= LARGEST) return png.toString('base64');
    scale /= 1.25;
  }
}

function pictureIn(bytes: Buffer): Picture | null {
  if (bytes.length < 24 || bytes.toString('latin1', 12, 16) !== 'IHDR') return null;
  const [width, height] = [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
  if (width === 0 || height === 0 || width * height > MOST_PIXELS) return null;
  try {
    const { data } = PNG.sync.read(bytes);
    return { width, height, rgb: onWhite(data) };
  } catch {
    return null;
  }
}

/** Paper is white, and a picture without transparency prints everywhere. */
function onWhite(rgba: Uint8Array): Uint8Array {
  const rgb = new Uint8Array((rgba.length / 4) * 3);
  for (let from = 0, to = 0; from < rgba.length; from += 4) {
    const share = (rgba[from + 3] ?? 0) / 255;
    for (let i = 0; i < 3; i++) rgb[to++] = Math.round((rgba[from + i] ?? 0) * share + 255 * (1 - share));
  }
  return rgb;
}

/** Each new pixel is the mean of those that it covers. */
function shrunk(picture: Picture, scale: number): Picture {
  const width = Math.max(1, Math.round(picture.width * scale));
  const height = Math.max(1, Math.round(picture.height * scale));
  const rgb = new Uint8Array(width * height * 3);
  const from = (at: number, small: number, large: number) => Math.floor((at * large) / small);
  const until = (at: number, small: number, large: number) =>
    Math.max(from(at, small, large) + 1, from(at + 1, small, large));
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      for (let i = 0; i < 3; i++) {
        let [sum, count] = [0, 0];
        for (let v = from(y, height, picture.height); v < until(y, height, picture.height); v++)
          for (let u = from(x, width, picture.width); u < until(x, width, picture.width); u++) {
            sum += picture.rgb[(v * picture.width + u) * 3 + i] ?? 0;
            count++;
          }
        rgb[(y * width + x) * 3 + i] = Math.round(sum / count);
      }
  return { width, height, rgb };
}

/** A PNG of 8 bits RGB with nothing in it but the picture. */
function written({ width, height, rgb }: Picture): Buffer {
  const png = new PNG({ width, height });
  for (let from = 0, to = 0; from < rgb.length; from += 3) {
    for (let i = 0; i < 3; i++) png.data[to++] = rgb[from + i] ?? 0;
    png.data[to++] = 255;
  }
  return PNG.sync.write(png, { colorType: 2, inputHasAlpha: true });
}

const notALogo = (where: string): Problem => ({
  code: 'logo-unreadable',
  where,
  message: w`this is not a PNG picture of at most 4 million pixels`,
  next: w`Save the logo as PNG, or leave "logo" out of the station file.`,
});
