/**
 * Half an hour of play, told in fast motion: 900 times, as every two seconds, the trainee looks elsewhere, walks, takes another aid,
 * a part changes, a photo is taken now and then, and the weather moves on. After each sixth of it the heap is swept and read; from
 * the second on it may not grow, nor may the page's nodes.
 */
import { expect, it } from 'vitest';
import { cdp } from 'vitest/browser';
import type { SceneView } from '../../src/drill/sceneTypes.ts';
import type { Aid } from '../../src/engine/senses/types.ts';
import { mountScene } from '../../src/scene/mountScene.ts';
import { busyWorld, withFault } from './busiest.ts';
import { snapshotAt } from './fogWorld.ts';

const wait = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));
const ROUNDS = 900;
const READ = ROUNDS / 6;
/** Bytes by which a swept heap wavers from reading to reading. */
const WAVERS = 1.5 * 2 ** 20;

interface Devtools {
  send(method: string): Promise<{ readonly usedSize?: number; readonly nodes?: number }>;
}

it('half an hour of play leaves heap and nodes as they were', async () => {
  const tools = cdp() as unknown as Devtools;
  const host = document.createElement('div');
  host.style.cssText = 'position:fixed;left:0;top:0;width:96px;height:54px';
  document.body.append(host);
  const world = busyWorld();
  // A part that changes is a new World: as many as a drill has, made once.
  const worlds = [null, 'pin-insulator-cracked', 'tie-broken', 'insulator-flashed'].map((kind) =>
    withFault(world, kind),
  );
  const stands = world.stands.map(({ id }) => id);
  const aids: readonly Aid[] = ['eyes', 'lamp', 'glass'];
  let now = snapshotAt(world, 'p2.road');
  let aid: Aid = 'eyes';
  const view: SceneView = {
    snapshot: () => now,
    onChoose: () => undefined,
    onHover: () => undefined,
    onTurn: () => undefined,
    aid: () => aid,
    reducedMotion: false,
    brightness: 1,
  };
  const scene = mountScene(host, view);
  while (host.querySelector('[role=progressbar]')) await wait(50);
  const read = async (): Promise<{ readonly heap: number; readonly nodes: number }> => {
    for (let i = 0; i < 3; i++) await tools.send('HeapProfiler.collectGarbage');
    const { usedSize = 0 } = await tools.send('Runtime.getHeapUsage');
    const { nodes = 0 } = await tools.send('Memory.getDOMCounters');
    return { heap: usedSize, nodes };
  };
  const readings: { readonly heap: number; readonly nodes: number }[] = [];
  for (let i = 0; i < ROUNDS; i++) {
    if (i % 3 === 0) scene.turn(0.4, i % 2 === 0 ? 0.05 : -0.05);
    if (i % 5 === 0) aid = aids[(i / 5) % 3] as Aid;
    const of = worlds[Math.floor(i / 12) % worlds.length] as typeof world;
    now = snapshotAt(of, stands[Math.floor(i / 8) % stands.length] as string);
    scene.update(now);
    if (i % 7 === 0) scene.lookToward(i % 14 === 0 ? 'p2.insulator' : null);
    if (i % 30 === 0) scene.photograph();
    await wait(16);
    if ((i + 1) % READ === 0) readings.push(await read());
  }
  scene.dispose();
  host.remove();
  console.log(readings.map(({ heap, nodes }) => `${(heap / 2 ** 20).toFixed(1)} MB, ${nodes} nodes`).join('; '));
  const [, second, ...later] = readings;
  const last = later.at(-1);
  expect(second?.heap).toBeGreaterThan(2 ** 20);
  expect((last?.heap ?? Number.POSITIVE_INFINITY) - (second?.heap ?? 0)).toBeLessThan(WAVERS);
  expect((last?.nodes ?? Number.POSITIVE_INFINITY) - (second?.nodes ?? 0)).toBeLessThan(20);
});
