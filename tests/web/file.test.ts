/** The page is one file that runs and asks for nothing but what is in it. */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const PAGE = new URL('../../dist/src/web/verify.html', import.meta.url);

describe('the file of the page', () => {
  const page = readFileSync(PAGE, 'utf8');

  it('is below 450 kB', () => {
    expect(page.length).toBeLessThan(450_000);
  });

  it('lets run only the script and the style that are in it, by their digests', () => {
    const policy = /content="(default-src[^"]*)"/.exec(page)?.[1] ?? '';
    for (const [directive, tag] of [
      ['script-src', 'script'],
      ['style-src', 'style'],
    ] as const) {
      const inside = new RegExp(`<${tag}>([\\s\\S]*?)</${tag}>`).exec(page)?.[1] ?? '';
      const digest = createHash('sha256').update(inside).digest('base64');
      expect(policy.split('; ')).toContain(`${directive} 'sha256-${digest}'`);
    }
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toMatch(/unsafe|https?:|\*/);
    expect(page.match(/<script/g)).toHaveLength(1);
    expect(page).not.toMatch(/\s(src|href|style|on\w+)=/);
  });
});
