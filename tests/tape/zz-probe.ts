import { readingAt } from '../../src/tape/read-at.ts';
import { readTape } from '../../src/tape/read-tape.ts';
import { nodeEngine } from '../tapes/node-engine.ts';
import { scene } from '../tapes/scene.ts';

const e = await nodeEngine();
for (const [k, s] of [
  ['cm tape on cloth', 3],
  ['inch tape on cloth', 1],
  ['cm and inch from both ends', 1],
  ['steel millimetres', 1],
  ['light print on dark', 2],
  ['tenths of an inch', 1],
  ['page of text', 1],
  ['rule without numbers', 1],
  ['webcam tape', 2],
] as const) {
  const t = performance.now();
  const sc = scene(k, s);
  const t1 = performance.now();
  const r = await readTape(sc, e.readPage);
  const errs: number[] = [],
    half: number[] = [];
  const ref: Record<string, number> = {};
  for (const p of sc.points) {
    const a = readingAt(r, p.x, p.y),
      b = readingAt(r, p.x - 0.5, p.y - 0.5);
    if (a.ok && p.onScale) errs.push(a.mm - p.mm);
    if (b.ok && p.onScale) half.push(b.mm - p.mm);
    if (!a.ok && p.onScale) ref[a.reason] = (ref[a.reason] ?? 0) + 1;
    if (a.ok && !p.onScale) ref['OFF ' + (a.mm - p.mm).toFixed(2)] = 1;
  }
  const rms = (v: number[]) => Math.sqrt(v.reduce((s, x) => s + x * x, 0) / v.length).toFixed(4);
  console.log(
    k,
    s,
    sc.width + 'x' + sc.height,
    sc.truth.expect,
    r.outcome,
    r.reason,
    r.scales.map((x) => [x.unit, x.sure, x.numbers.length, x.doubts]),
    'n',
    errs.length,
    'rms',
    rms(errs),
    'rms half px',
    rms(half),
    'max',
    Math.max(...errs.map(Math.abs)),
    ref,
    'make',
    (t1 - t) | 0,
    'read',
    (performance.now() - t1) | 0,
  );
}
await e.close();
