import { rmSync } from 'node:fs';
import * as here from './db/log.ts';
const there = await import('/tmp/d-scratch/main/db/log.ts');
import { openStationLog } from './db/log.ts';
const src = await openStationLog('/tmp/d-scratch/demo9/station.db');
const stream = src.streams()[0]!;
const drafts = src.entries(stream).map(({by,event})=>({by,event}));
src.close();
const logs:any = {}; const paths={here:'/tmp/d-scratch/ab-here.db',there:'/tmp/d-scratch/ab-there.db'};
for (const k of ['here','there'] as const){ for(const e of ['','-wal','-shm']) rmSync(paths[k]+e,{force:true}); logs[k]=await (k==='here'?here:there).openStationLog(paths[k]); }
const stamp={at:'2026-11-29T12:00:00.000Z',monoUs:1};
const res:any={here:{wall:[],cpu:[],bw:[],bwall:[]},there:{wall:[],cpu:[],bw:[],bwall:[]}};
for(let round=0;round<100;round++) for(const k of round%2?['here','there']:['there','here']){
  if(round<0){const c=process.cpuUsage(), t=performance.now();
  for(const d of drafts) logs[k].append('job:R'+round,[d],stamp);
  const w=performance.now()-t, u=process.cpuUsage(c);
  res[k].wall.push(w/drafts.length); res[k].cpu.push((u.user+u.system)/1000/drafts.length);}
  const t2=process.cpuUsage(), w2=performance.now(); logs[k].append('job:S'+round,drafts,stamp); const u2=process.cpuUsage(t2); res[k].bw.push((u2.user+u2.system)/1000/drafts.length); res[k].bwall.push((performance.now()-w2)/drafts.length);
}
const med=(a:number[])=>a.sort((x,y)=>x-y)[a.length>>1]!;
for(const m of ['bw','bwall']){const a=med(res.here[m]),b=med(res.there[m]);console.log(m,'here',a.toFixed(4),'main',b.toFixed(4),'ratio',(a/b).toFixed(3));}
console.log(drafts.length,'entries a job; sizes', logs.here.size(), logs.there.size());
logs.here.close();logs.there.close();
