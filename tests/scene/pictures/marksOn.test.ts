/** A mark lies on the surface that its sign names. */
import { Box3, type Object3D } from 'three';
import { describe, expect, it } from 'vitest';

import { drawingOf } from '../../../src/scene/pictures/drawWorld.ts';
import { laid, partOfKind, worldWith } from '../everyKind.ts';
import { bare } from '../hardware/parts.ts';

/** Heights between which the marks of a fault on a transformer lie, world axes. */
const marked = (fault: string): Box3 => {
  const part = partOfKind('transformer');
  const drawing = drawingOf(bare);
  drawing.follow(worldWith({ ...part, faults: [laid(fault)] }));
  const box = new Box3();
  for (const object of drawing.of(part.id)) {
    object.updateWorldMatrix(true, true);
    object.traverse((o: Object3D) => {
      if (o.name.startsWith('mark-')) box.expandByObject(o);
    });
  }
  return box;
};

describe('on a transformer', () => {
  const crack = marked('transformer-bushing-cracked');

  it.each(['tank-weld-seam', 'tank-faded', 'tank-rain-run'])('%s lies on the tank, under the bushing', (fault) => {
    const box = marked(fault);
    expect(box.isEmpty()).toBe(false);
    expect(box.max.z).toBeLessThan(crack.min.z);
  });
});
