/** The drawer's host and the shelf: progress, result, cancelling, a worker that fails, what is kept and found again. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { WorkerOf } from '../../src/app/beside.ts';
import { createDrawer, type FromDrawer, type ToDrawer } from '../../src/app/drawer.ts';
import { createKept } from '../../src/app/kept.ts';
import { offeredFrom } from '../../src/app/library.ts';
import { createShelf } from '../../src/app/shelf.ts';
import type { Offered } from '../../src/screens/types.ts';
import { root } from '../../src/setup/run.mjs';
import { makeDesk, memoryStore } from './makeDesk.ts';
import { quarryRoad } from './quarryRoad.ts';

const text = readFileSync(join(root, 'scenarios/mill-lane-refuse.yaml'), 'utf8');
const drawn = text
  .replace('id: mill-lane-refuse', 'id: mill-lane-refuse-7-1')
  .replace('call:\n', 'variant: { of: mill-lane-refuse, seed: 7, number: 1 }\n\ncall:\n');

const offered = (of: string): Offered => {
  const read = offeredFrom(of, 'scene.yaml');
  if (!read.ok) throw new Error(read.problems.join('\n'));
  return read.offered;
};
const base = offered(text);

const workerFor = () => {
  const asked: ToDrawer[] = [];
  let ended = false;
  const worker: WorkerOf<ToDrawer, FromDrawer> = {
    postMessage: (message) => asked.push(message),
    terminate: () => {
      ended = true;
    },
    onmessage: null,
    onerror: null,
  };
  const say = (data: FromDrawer): void => worker.onmessage?.({ data } as MessageEvent<FromDrawer>);
  return { worker, asked, gone: () => ended, say };
};

const drawerWith = (worker: WorkerOf<ToDrawer, FromDrawer> | null) => {
  const shelf = createShelf(createKept(memoryStore()));
  return { shelf, drawer: createDrawer({ worker: () => worker, shelve: shelf.add }) };
};

describe('the drawer', () => {
  it('asks by the number, tells how far it is, lays what was drawn on the shelf and lets the worker go', () => {
    const { worker, asked, gone, say } = workerFor();
    const { drawer, shelf } = drawerWith(worker);
    drawer.start(base, 7);
    expect(asked).toEqual([{ base: { id: 'mill-lane-refuse', text }, grade: 1, seed: 7 }]);
    say({ draws: 2 });
    expect(drawer.state.value).toEqual({ is: 'running', base: base.hash, seed: 7, draws: 2 });
    say({ yaml: drawn, par: null });
    expect(drawer.state.value).toMatchObject({ is: 'done', base: base.hash, seed: 7 });
    expect(shelf.offered.value.map(({ scenario }) => scenario.id)).toEqual(['mill-lane-refuse-7-1']);
    expect(gone()).toBe(true);
  });

  it('ends the worker when it is cancelled, and says so when it fails, gives up or is not there', () => {
    const { worker, gone } = workerFor();
    const { drawer } = drawerWith(worker);
    drawer.start(base, 7);
    drawer.cancel();
    expect([gone(), drawer.state.value.is]).toEqual([true, 'idle']);
    drawer.start(base, 8);
    worker.onmessage?.({ data: { gaveUp: 40 } } as MessageEvent<FromDrawer>);
    expect(drawer.state.value).toMatchObject({ is: 'failed', why: expect.stringContaining('40 draws') });
    drawer.start(base, 9);
    worker.onerror?.({ message: 'out of memory' } as ErrorEvent);
    expect(drawer.state.value).toMatchObject({ is: 'failed', why: 'out of memory' });
    const none = drawerWith(null);
    none.drawer.start(base, 1);
    expect(none.drawer.state.value.is).toBe('failed');
  });
});

describe('the shelf', () => {
  it('holds what was drawn when the page is opened again, once each, until it is put away', () => {
    const store = memoryStore();
    const shelf = createShelf(createKept(store));
    const { hash } = shelf.add(drawn, null);
    shelf.add(drawn, null);
    const again = createShelf(createKept(store));
    expect(again.offered.value.map((each) => each.hash)).toEqual([hash]);
    again.remove(hash);
    expect(createShelf(createKept(store)).offered.value).toEqual([]);
  });

  it('passes over what is torn', () => {
    const store = memoryStore();
    store.setItem('loose-tie.variants', '[{"yaml":"format: 9","par":null},{"yaml":1}]');
    expect(createShelf(createKept(store)).offered.value).toEqual([]);
    store.setItem('loose-tie.variants', '{');
    expect(createShelf(createKept(store)).offered.value).toEqual([]);
  });
});

describe('a drill of a drawn scenario', () => {
  it('names in its log what it was drawn from, and is gone on with from the shelf', () => {
    const store = memoryStore();
    const { desk, shelf, playing } = makeDesk(quarryRoad, store);
    desk.take(shelf.add(drawn, null));
    playing().send({ act: 'acknowledge' });
    const { log } = playing().snapshot.value;
    expect(log.variant).toEqual({ of: 'mill-lane-refuse', seed: 7, number: 1 });
    const second = makeDesk(quarryRoad, store);
    second.desk.goOn();
    expect(second.playing().snapshot.value.log).toEqual(log);
  });

  it('says how its scenario may be got where it is not kept', async () => {
    const first = makeDesk(quarryRoad);
    first.desk.take(first.shelf.add(drawn, null));
    first.playing().send({ act: 'acknowledge' });
    first.desk.saveLog();
    const second = makeDesk(quarryRoad);
    await second.desk.openLog(new File([first.files[0]?.text ?? ''], 'log.json'));
    expect(second.desk.problem.value).toContain('drawn from mill-lane-refuse by number 7');
  });
});
