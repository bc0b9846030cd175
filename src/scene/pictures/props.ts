/** Objects of what people put out, redrawn when what is out has changed. */
import { Group, type Mesh, type Object3D } from 'three';
import type { World } from '../../engine/world/types.ts';
import type { Materials } from '../materials/materials.ts';
import { buildPiece } from './buildPiece.ts';
import { finished } from './finished.ts';
import { type PutOut, putOutIn } from './putOut.ts';

export interface Props {
  dispose(): void;
  readonly root: Group;
  follow(world: World, stand: string): boolean;
  /** The same, a thing at a time. */
  steps(world: World, stand: string): Generator<void, boolean>;
  /** All objects of all things. */
  groups(): readonly Group[];
  /** Ids that can be pointed at, with their objects. */
  named(): ReadonlyMap<string, Object3D>;
}

/** An empty set of things put out. */
export const propsOf = (set: Materials): Props => {
  const root = new Group();
  const built = new Map<string, { readonly id: string | null; readonly group: Group }>();
  const release = (key: string): void => {
    const { group } = built.get(key) as { group: Group };
    group.removeFromParent();
    group.traverse((o) => {
      (o as Mesh).geometry?.dispose();
    });
    built.delete(key);
  };
  const keyOf = (item: PutOut, i: number): string => `${i} ${JSON.stringify(item)}`;
  const steps = function* (world: World, stand: string): Generator<void, boolean> {
    const wanted = new Map(putOutIn(world, stand).map((item, i) => [keyOf(item, i), item]));
    let changed = false;
    for (const key of [...built.keys()]) {
      if (wanted.has(key)) continue;
      release(key);
      changed = true;
    }
    for (const [key, item] of wanted) {
      if (built.has(key)) continue;
      const group = buildPiece(item.piece, set);
      root.add(group);
      built.set(key, { id: item.id, group });
      changed = true;
      yield;
    }
    return changed;
  };
  return {
    root,
    steps,
    follow: (world, stand) => finished(steps(world, stand)),
    groups: () => [...built.values()].map(({ group }) => group),
    named: () => new Map([...built.values()].flatMap(({ id, group }) => (id === null ? [] : [[id, group] as const]))),
    dispose: () => {
      for (const key of [...built.keys()]) release(key);
    },
  };
};
