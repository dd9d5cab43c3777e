import { join } from 'node:path';
import { expect, it } from 'vitest';
import { showCalendar } from '../../../src/cli/audit/calendar.ts';
import { openStationFolder } from '../../../src/cli/station/station.ts';
import { type ShopJob, workIn } from '../../audit/shop.ts';
import { said } from '../answers.ts';
import { folder } from '../program.ts';

it('counts a re-hit as a cycle of a wrench, and says that pulls given to no plug are missing', async () => {
  const data = join(folder(), 'data');
  const behind: ShopJob['behind'] = (shop) => {
    shop.again(27);
    shop.rest();
    // Everything is tight: this one is a check of no plug that anybody named.
    shop.again(27);
  };
  await workIn(data, [{ job: 'J-1', on: '2026-02-03', peaks: [27, 27, 27, 27], behind }]);
  const { log } = await openStationFolder(data);
  const pulls = log.entries('job:J-1').filter(({ event }) => event.type === 'pull-detected').length;
  log.close();
  expect(pulls).toBe(6);
  const { text } = await said(() =>
    showCalendar({ station: 'none.json', data, soon: 30, shortest: 90, longest: 365 }),
  );
  const [cycles, lastUsed] = /EXAMPLE-W-1 .* (\d+) +([\d-]+)$/m.exec(text)?.slice(1) ?? [];
  expect([cycles, lastUsed]).toEqual(['5', '2026-02-03']);
  expect(text).toContain('Pulls on no plug do not count');
});
