import { foldAll } from '../../src/job/fold.ts';
import { judgeAgain, outcomeOf } from '../../src/rules/judge.ts';
import * as jobs from './jobs.ts';
import * as driver from './driver-jobs.ts';
for (const [name, make] of [...Object.entries(jobs), ...Object.entries(driver)].filter(([n,m])=>typeof m==='function' && n!=='orderOf')) {
  try { const e = await (make as any)('EX-1', '2026-03-02'); const s = foldAll(e); console.log(name, e.length, JSON.stringify(e).length, judgeAgain(e), JSON.stringify(outcomeOf(e).lacks), JSON.stringify(s?.questions.map(q=>q.pull)), s?.cylinders.map(c=>c.gap+' '+c.torque+':'+c.pulls.map(p=>p.pull.pull+'/'+p.judgement?.result).join()).join(' | ')); }
  catch (e) { console.log(name, 'FAILED', (e as Error).stack); }
}
