/** Objects of what people put out, redrawn when what is out has changed. */
import { Group, type Mesh, type Object3D } from 'three';
import type { World } from '../../engine/world/types.ts';
import type { Materials } from '../materials/materials.ts';
import { buildPiece } from './drawWorld.ts';
import { type PutOut, putOutIn } from './putOut.ts';

export interface Props {
  dispose(): void;
  readonly root: Group;
  follow(world: World, stand: string): boolean;
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
  return {
    root,
    follow: (world, stand) => {
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
      }
      return changed;
    },
    named: () => new Map([...built.values()].flatMap(({ id, group }) => (id === null ? [] : [[id, group] as const]))),
    dispose: () => {
      for (const key of [...built.keys()]) release(key);
    },
  };
};
