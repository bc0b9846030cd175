/** A guy that is down, as drawn: its strand and guard lie where the engine looks for the sign, and no strand is left up there. */
import { Line3, type Mesh, type Object3D, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { componentKind } from '../../../src/engine/catalogue/components.ts';
import { faultKind } from '../../../src/engine/catalogue/faults.ts';
import { facesOf } from '../../../src/engine/senses/faces.ts';
import { lieOf } from '../../../src/engine/senses/signsFrom.ts';
import { partById } from '../../../src/engine/world/edit.ts';
import { placeOfFeature } from '../../../src/engine/world/featurePlace.ts';
import type { Part } from '../../../src/engine/world/types.ts';
import { materials } from '../../../src/scene/materials/materials.ts';
import { drawingOf } from '../../../src/scene/pictures/drawWorld.ts';
import { laid } from '../everyKind.ts';
import { fogWorld } from '../fogWorld.ts';

const world = fogWorld();
const sound = partById(world, 'p3.guy');
const fault = laid('guy-broken', 'any');
const down: Part = { ...sound, faults: [fault] };
const set = materials();

/** Edges of the strand as drawn. */
const strandOf = (part: Part): readonly Line3[] => {
  const drawing = drawingOf(set);
  drawing.follow({ ...world, parts: world.parts.map((each) => (each.id === part.id ? part : each)) });
  const out: Line3[] = [];
  const gather = (o: Object3D): void => {
    if (o.name !== 'steelStrand') return;
    const { geometry } = o as Mesh;
    const [p, index] = [geometry.getAttribute('position'), geometry.getIndex()];
    if (index === null) throw new Error('a strand without an index');
    const corner = (i: number) => new Vector3().fromBufferAttribute(p, index.getX(i)).applyMatrix4(o.matrixWorld);
    for (let i = 0; i < index.count; i += 3)
      out.push(new Line3(corner(i), corner(i + 1)), new Line3(corner(i), corner(i + 2)));
  };
  for (const root of drawing.of(part.id)) {
    root.updateWorldMatrix(true, true);
    root.traverse(gather);
  }
  return out;
};
const away = (edges: readonly Line3[], [x, y, z]: readonly [number, number, number]): number => {
  const place = new Vector3(x, y, z);
  return Math.min(...edges.map((e) => e.closestPointToPoint(place, true, new Vector3()).distanceTo(place)));
};

describe('a guy that is down', () => {
  const strand = strandOf(down);
  const signs = faultKind('guy-broken').signs.filter(({ sense }) => sense === 'see');

  it('lies in the picture at every spot where the engine asks for its sign', () => {
    const spots = signs.flatMap((kind) => facesOf(down, lieOf(down, fault, kind)).flatMap((face) => face.spots));
    expect(spots.length).toBeGreaterThan(4);
    for (const { at } of spots) expect(away(strand, at)).toBeLessThan(0.3);
  });

  it('is gone from where it was taut', () => {
    const [feature] = componentKind('guy').features;
    if (feature === undefined) throw new Error('a guy has no feature');
    const was = placeOfFeature(sound, feature);
    expect(away(strandOf(sound), was)).toBeLessThan(0.1);
    expect(away(strand, was)).toBeGreaterThan(0.5);
  });
});
