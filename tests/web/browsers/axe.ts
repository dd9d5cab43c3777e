import axe from 'axe-core';
import type { Page } from 'puppeteer-core';
import { z } from 'zod';

const foundSchema = z.array(z.object({ id: z.string(), nodes: z.array(z.object({ html: z.string() })) }));

/** What axe-core finds on the page as it is, a line each. */
export async function foundByAxe(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  const found = foundSchema.parse(await page.evaluate('axe.run().then(({ violations }) => violations)'));
  return found.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 200)}`);
}
