import { test } from 'vitest';
import { build } from '../../../src/engine/world/build.ts';
import { layOut } from '../../../src/screens/bench/layout.ts';
import { quarryRoad } from '../../app/quarryRoad.ts';

test('x', () => {
  const o = quarryRoad.offered[0];
  if (!o) throw 0;
  const t = performance.now();
  const l = layOut(build(o.scenario, o.hash));
  console.log('ms', performance.now() - t);
  for (const b of l.graph.buses) console.log(b.id, JSON.stringify(b.legs));
  for (const e of l.graph.edges)
    console.log(e.part, e.symbol, e.from, e.to, e.branches.join(), e.state, e.fault, e.slope);
  console.log(
    l.wide.width,
    l.wide.height,
    l.narrow.map((n) => [n.id, n.width, n.height]),
  );
});
