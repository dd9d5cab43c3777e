import { createHash } from 'node:crypto';
import { parseStrictJson } from '../../evidence/strict-json.ts';
import { readBytes } from '../../files/input.ts';
import { type Certificate, certificateFromJson } from '../../instrument/certificate.ts';
import { certificateFromDcc } from '../../instrument/dcc.ts';
import { ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';

const MAX_BYTES = 1 << 20;

/** A calibration certificate from a file: a digital calibration certificate in XML, or the JSON form. `serials`: of the tools it may be for. */
export async function readCertificate(file: string, serials: readonly string[] = []): Promise<Certificate> {
  return certificateIn(await readBytes(file, w`calibration certificate`, MAX_BYTES), file, serials);
}

/** The certificate with the SHA-256 of its file, in hexadecimal digits. */
export async function readCertificateFile(
  file: string,
): Promise<{ readonly certificate: Certificate; readonly digest: string }> {
  const bytes = await readBytes(file, w`calibration certificate`, MAX_BYTES);
  const digest = createHash('sha256').update(bytes).digest('hex');
  return { certificate: certificateIn(bytes, file), digest };
}

function certificateIn(bytes: Uint8Array, file: string, serials: readonly string[] = []): Certificate {
  const text = textOf(bytes, file);
  if (text.trimStart().startsWith('<')) return orThrow(certificateFromDcc(text, file, serials));
  return orThrow(certificateFromJson(orThrow(parseStrictJson(bytes, file)), file));
}

function textOf(bytes: Uint8Array, file: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new ProblemError({
      code: 'not-utf8',
      where: file,
      message: w`the calibration certificate is not UTF-8 text`,
      next: w`Save it as UTF-8.`,
    });
  }
}
