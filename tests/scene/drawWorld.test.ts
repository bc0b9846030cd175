import { Box3, type Mesh, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { componentKind } from '../../src/engine/catalogue/components.ts';
import { faultKind } from '../../src/engine/catalogue/faults.ts';
import { facesOf } from '../../src/engine/senses/faces.ts';
import { lieOf } from '../../src/engine/senses/signsFrom.ts';
import { placeOn, withoutFault, withPart, withPerson } from '../../src/engine/world/edit.ts';
import { placeOfFeature } from '../../src/engine/world/featurePlace.ts';
import type { World } from '../../src/engine/world/types.ts';
import { materials } from '../../src/scene/materials/materials.ts';
import { drawingOf } from '../../src/scene/pictures/drawWorld.ts';
import { propsOf } from '../../src/scene/pictures/props.ts';
import { fogWorld } from './fogWorld.ts';

const world = fogWorld();
const set = materials();
const drawn = (of: World) => {
  const drawing = drawingOf(set);
  drawing.follow(of);
  return drawing;
};
const drawing = drawn(world);
const boxOf = (id: string, from = drawing): Box3 => {
  const box = new Box3();
  for (const object of from.of(id)) box.expandByObject(object);
  return box;
};
const marksOf = (id: string, from = drawing): readonly string[] =>
  from.of(id).flatMap((group) => group.children.map(({ name }) => name).filter((name) => name.startsWith('mark-')));

describe('a World as objects', () => {
  const seen = world.parts.filter(({ kind }) => componentKind(kind).features.length > 0);

  it.each(seen.map(({ id }) => id))('draws %s within half a metre of where the engine looks at it', (id) => {
    const part = world.parts.find((p) => p.id === id);
    expect(part).toBeDefined();
    const box = boxOf(id);
    expect(box.isEmpty()).toBe(false);
    const features = componentKind(part?.kind ?? '').features;
    const nearest = Math.min(
      ...features.map((feature) => box.distanceToPoint(new Vector3(...placeOfFeature(part as never, feature)))),
    );
    expect(nearest).toBeLessThan(0.5);
  });

  // Drops of wire and leads are drawn with their part; its solids lie within, but for what hangs where its pole is thin or thick.
  const solid = world.parts.filter((part) => componentKind(part.kind).solids(part).length > 0);
  it.each(solid.map((part) => [part.id, part] as const))(
    'draws %s about the solids that hide what is behind it',
    (id, part) => {
      const box = boxOf(id).expandByScalar(0.05);
      for (const each of componentKind(part.kind).solids(part)) {
        const ends = each.shape === 'box' ? [each.centre] : [each.from, each.to];
        for (const end of ends) expect(box.distanceToPoint(new Vector3(...placeOn(part, end)))).toBe(0);
      }
    },
  );

  it('lays a mark on the face on which the engine looks for it', () => {
    let asked = 0;
    for (const part of world.parts) {
      for (const fault of part.faults) {
        const sign = faultKind(fault.kind).signs.find(({ sense }) => sense === 'see');
        const marks = drawing
          .of(part.id)
          .flatMap(({ children }) => children.filter(({ name }) => name.startsWith('mark-')));
        if (sign === undefined || marks.length === 0) continue;
        const [face] = facesOf(part, lieOf(part, fault, sign));
        const away = Math.min(
          ...marks.map((mark) =>
            new Box3().setFromObject(mark).distanceToPoint(new Vector3(...(face?.at ?? [0, 0, 0]))),
          ),
        );
        expect(away, fault.id).toBeLessThan(0.05);
        asked++;
      }
    }
    expect(asked).toBeGreaterThan(2);
  });

  it('has no vertex that is not a number', () => {
    for (const { id } of world.parts) {
      for (const object of drawing.of(id)) {
        object.traverse((o) => {
          const position = (o as Mesh).geometry?.getAttribute('position');
          if (position) expect([...(position.array as Float32Array)].every(Number.isFinite)).toBe(true);
        });
      }
    }
  });

  it('hangs spans by their sag', () => {
    const span = world.parts.find(({ id }) => id === 's1.phase');
    const box = boxOf('s1.phase');
    const low = Math.min(span?.at[2] ?? 0, span?.end?.[2] ?? 0);
    expect(box.min.z).toBeLessThan(low - 0.2);
    expect(box.min.z).toBeGreaterThan(low - (span?.values.sagM ?? 0) - 0.1);
  });

  it('joins lead and cutout, cutout and transformer by wires that end at both', () => {
    const clamp = boxOf('p2.clamp');
    const cutout = boxOf('p2.cutout');
    const tank = boxOf('p2.transformer');
    expect(clamp.intersectsBox(cutout)).toBe(true);
    expect(tank.intersectsBox(cutout)).toBe(true);
  });

  it('draws nothing again while nothing has changed', () => {
    const mine = drawn(world);
    const before = mine.of('p2.cutout');
    expect(mine.follow({ ...world, clock: { minute: 3 } })).toBe(false);
    expect(mine.of('p2.cutout')).toBe(before);
  });

  it('draws one pole again and leaves the others when one part of it has changed', () => {
    const mine = drawn(world);
    const other = mine.of('p1.tap-cutout');
    const own = mine.of('p2.cutout');
    expect(mine.follow(withPart(world, 'p2.cutout', { state: { position: 'open', link: 'sound' } }))).toBe(true);
    expect(mine.of('p1.tap-cutout')).toBe(other);
    expect(mine.of('p2.cutout')).not.toBe(own);
  });

  it('leaves every piece of that pole that comes out as before', () => {
    const mine = drawn(world);
    const before = new Set(mine.groups());
    mine.follow(withPart(world, 'p2.cutout', { state: { position: 'open', link: 'sound' } }));
    const anew = mine.groups().filter((group) => !before.has(group));
    expect(anew.map(({ userData }) => userData.kind)).toContain('cutout');
    expect(anew.length).toBeLessThan(6);
    expect(mine.of('p2.transformer').every((group) => before.has(group as never))).toBe(true);
    const shown = new Set(mine.root.children);
    expect(new Set(mine.groups())).toEqual(shown);
  });

  it('builds a body anew when a mark on it comes or goes, for marks bite', () => {
    const sound = withoutFault(world, 'crack');
    const mine = drawn(sound);
    const [bare] = mine.of('p2.insulator');
    mine.follow(world);
    expect(marksOf('p2.insulator', mine)).toEqual(['mark-crack']);
    expect(mine.of('p2.insulator')[0]).not.toBe(bare);
    mine.follow(sound);
    expect(marksOf('p2.insulator', mine)).toEqual([]);
  });

  it('lights the windows of a house that is supplied, and darkens them when its set stops', () => {
    const names = (from: ReturnType<typeof drawn>): readonly string[] =>
      from.of('a.house').flatMap((group) => group.children.map(({ name }) => name));
    expect(names(drawing)).toContain('windowLit');
    const set1 = world.parts.find(({ id }) => id === 'a.generator');
    const stopped = withPart(world, 'a.generator', { state: { ...set1?.state, run: 'stopped' } });
    expect(names(drawn(stopped))).not.toContain('windowLit');
  });
});

describe('signs on parts', () => {
  it('shows a crack, a burn, a stain and a scar where they are laid', () => {
    expect(marksOf('p2.insulator')).toEqual(['mark-crack']);
    expect([...marksOf('p2.pole')].sort()).toEqual(['mark-burn', 'mark-stain']);
    expect(marksOf('p1.pole')).toEqual(['mark-scar']);
  });

  it('shows none on the same World without its faults', () => {
    const sound = ['crack', 'burn', 'stain', 'scar'].reduce(withoutFault, world);
    const clean = drawn(sound);
    for (const id of ['p2.insulator', 'p2.pole', 'p1.pole']) expect(marksOf(id, clean)).toEqual([]);
  });

  it('draws a broken tie, a bond burned off and a cut ground wire otherwise than sound ones', () => {
    for (const [fault, part] of [
      ['tie', 'p2.tie'],
      ['bond', 'p2.ground-bond'],
      ['copper', 'p2.ground-lead'],
    ] as const) {
      const count = (from: ReturnType<typeof drawn>): number => {
        let n = 0;
        for (const group of from.of(part)) {
          group.traverse((o) => {
            n += (o as Mesh).geometry?.getAttribute('position').count ?? 0;
          });
        }
        return n;
      };
      expect(count(drawn(withoutFault(world, fault)))).not.toBe(count(drawing));
    }
  });
});

describe('what is put out', () => {
  it('shows people where they stand, and the second worker only once there', () => {
    const props = propsOf(set);
    props.follow(world, 'p2.road');
    expect([...props.named().keys()]).toContain('a.customer');
    expect(props.named().has('second')).toBe(false);
    props.follow(withPerson(world, 'second', { at: 'p2.road' }), 'p2.road');
    expect(props.named().has('second')).toBe(true);
  });

  it('puts cones, chocks and a barrier out with the guards, and takes them in again', () => {
    const props = propsOf(set);
    props.follow(world, 'p2.road');
    const before = props.root.children.length;
    props.follow({ ...world, guards: { ...world.guards, chocks: true, cones: true, keepOut: true } }, 'p2.road');
    expect(props.root.children.length).toBeGreaterThan(before + 10);
    props.follow(world, 'p2.road');
    expect(props.root.children.length).toBe(before);
  });

  it('hangs a ground between the points of its clamps', () => {
    const props = propsOf(set);
    const jumper = { id: 'j1', tool: 'ground-1', points: ['p2.neutral-spool/neutral', 'p2.clamp/line'] };
    props.follow({ ...world, jumpers: [jumper] }, 'p2.road');
    const ground = props.named().get('ground-1');
    expect(ground).toBeDefined();
    const box = new Box3().setFromObject(ground as never);
    expect(box.max.z).toBeGreaterThan(10.3);
    expect(box.min.z).toBeLessThan(9);
  });

  it('never parks the truck on top of the trainee', () => {
    for (const stand of world.stands) {
      const props = propsOf(set);
      props.follow(world, stand.id);
      const box = new Box3().setFromObject(props.named().get('truck') as never);
      expect(box.containsPoint(new Vector3(stand.feet[0], stand.feet[1], stand.feet[2] + stand.eye))).toBe(false);
    }
  });
});
