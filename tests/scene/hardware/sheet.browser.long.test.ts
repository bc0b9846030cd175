/**
 * Contact sheets: every kind of hardware in every state and make, and every kind of part under every fault that can be seen, from
 * front, side and back, by day and by lamp. Hashes are held against a committed table; the sheets are written beside this file
 * (not kept in git) to be looked at. What is not yet in the table is only put on the sheet: UPDATE=1 takes it in.
 */
import { Box3, type Object3D, Vector3 } from 'three';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { commands } from 'vitest/browser';
import { componentKinds } from '../../../src/engine/catalogue/components.ts';
import { faultKind, faultKinds } from '../../../src/engine/catalogue/faults.ts';
import type { FaultKind } from '../../../src/engine/catalogue/types.ts';
import { facesOf } from '../../../src/engine/senses/faces.ts';
import { lieOf } from '../../../src/engine/senses/signsFrom.ts';
import type { Part } from '../../../src/engine/world/types.ts';
import { hardware } from '../../../src/scene/hardware/registry.ts';
import { materials } from '../../../src/scene/materials/materials.ts';
import { type Drawing, drawingOf } from '../../../src/scene/pictures/drawWorld.ts';
import { laid, partOfKind, worldWith } from '../everyKind.ts';
import { kinds, specsOf } from './parts.ts';
import table from './sheet.json';
import { apart, EDGE, hashOf, type Light, lights, type Studio, studioOf } from './studio.ts';

declare module 'vitest' {
  interface ProvidedContext {
    update: boolean;
  }
}

/** Front, side and back, as azimuths of whoever looks. */
const sides = { front: -Math.PI / 2 + 0.3, side: 0.3, back: Math.PI / 2 + 0.3 } as const;
/** Bits of 64 by which another renderer of the same picture may differ. */
const SLACK = 12;

let studio: Studio;
const found: Record<string, string> = {};
const known: Readonly<Record<string, string>> = table;

beforeAll(() => {
  studio = studioOf();
});

interface Cell {
  readonly name: string;
  readonly objects: readonly Object3D[];
  readonly box: Box3;
}

/** Shoots all cells, lays them on a sheet, and hashes each. */
const shootAll = async (file: string, cells: readonly Cell[]): Promise<void> => {
  const columns = Object.keys(sides).length * lights.length;
  const sheet = document.createElement('canvas');
  sheet.width = columns * EDGE;
  sheet.height = Math.max(1, cells.length) * (EDGE + 12);
  const c = sheet.getContext('2d') as CanvasRenderingContext2D;
  c.fillStyle = '#fff';
  c.fillRect(0, 0, sheet.width, sheet.height);
  c.fillStyle = '#000';
  c.font = '10px sans-serif';
  cells.forEach(({ name, objects, box }, row) => {
    c.fillText(name, 2, row * (EDGE + 12) + 10);
    let column = 0;
    for (const light of lights as readonly Light[]) {
      for (const [side, azimuth] of Object.entries(sides)) {
        const pixels = studio.shoot(objects, box, azimuth, light);
        c.drawImage(studio.canvas, column * EDGE, row * (EDGE + 12) + 12);
        found[`${name} ${side} ${light}`] = hashOf(pixels);
        column++;
      }
    }
  });
  const [, data = ''] = sheet.toDataURL('image/png').split(',');
  await commands.writeFile(`tests/scene/hardware/sheets/${file}.png`, data, { encoding: 'base64' });
};

const boxOf = (objects: readonly Object3D[]): Box3 => {
  const box = new Box3();
  for (const object of objects) box.expandByObject(object);
  return box;
};

/** Long things are looked at where there is something to see. */
const closeTo = (box: Box3, half: number): Box3 => {
  const middle = box.getCenter(box.min.clone());
  const size = box.getSize(box.max.clone());
  if (Math.max(size.x, size.y, size.z) < 4 * half) return box;
  const top = box.max.z - Math.min(half, size.z / 2);
  return new Box3(middle.clone().setZ(top).subScalar(half), middle.clone().setZ(top).addScalar(half));
};

/** A hand's breadth about the marks of a fault; null without any. */
const aboutMarks = (objects: readonly Object3D[]): Box3 | null => {
  const box = new Box3();
  for (const object of objects) {
    // What was drawn just now has its place only after a picture.
    object.updateWorldMatrix(true, true);
    object.traverse((o) => {
      if (o.name.startsWith('mark-')) box.expandByObject(o);
    });
  }
  return box.isEmpty() ? null : box.expandByScalar(0.1);
};

/** Where the engine looks for a sign: half the box's edge goes with the sign's extent. */
const aboutSign = (part: Part): Box3 | null => {
  const [fault] = part.faults;
  const sign = fault && faultKind(fault.kind).signs.find(({ sense }) => sense === 'see');
  const [face] = sign ? facesOf(part, lieOf(part, fault, sign)) : [];
  if (!face) return null;
  const middle = new Vector3(...face.at);
  const half = Math.max(0.11, Math.min(1.2, 0.45 * face.long));
  return new Box3(middle.clone().subScalar(half), middle.clone().addScalar(half));
};

const isVast = (box: Box3): boolean => {
  const { x, y } = box.getSize(new Vector3());
  return Math.min(x, y) > 3;
};

/** Of a drawing, what reaches into a box and is no house: a part is known by what it is fastened to. */
const near = (drawing: Drawing, box: Box3): readonly Object3D[] =>
  drawing.groups().filter((group) => {
    const own = new Box3().expandByObject(group);
    return own.intersectsBox(box) && !isVast(own);
  });

const heldAgainst = (prefix: string): void => {
  if (inject('update')) return;
  const strange = Object.entries(found)
    .filter(([name]) => name.startsWith(prefix))
    .filter(([name, hash]) => known[name] !== undefined && apart(known[name] as string, hash) > SLACK)
    .map(([name, hash]) => `${name}: ${known[name]} → ${hash}`);
  expect(strange).toEqual([]);
};

describe('hardware', () => {
  it.each(kinds)('%s looks as on the committed sheet, in every state and make', async (kind) => {
    const cells = specsOf(kind).map((spec): Cell => {
      const part = hardware[kind]?.(spec, materials());
      if (!part) throw new Error(kind);
      return {
        name: `hardware/${kind}/${spec.state}/${spec.variant}`,
        objects: [part],
        box: closeTo(boxOf([part]), 0.9),
      };
    });
    await shootAll(`hardware-${kind}`, cells);
    heldAgainst(`hardware/${kind}/`);
  });
});

const visible = (kind: string) =>
  faultKinds.filter((fault) => fault.on.includes(kind) && fault.signs.some(({ sense }) => sense === 'see'));

/** The make on which alone a fault is found. */
const madeFor = (part: Part, { only = {} }: FaultKind): Part => ({
  ...part,
  words: { ...part.words, ...Object.fromEntries(Object.entries(only).map(([word, [first = '']]) => [word, first])) },
});

describe('faults', () => {
  const faulty = componentKinds.map(({ id }) => id).filter((id) => visible(id).length > 0);
  it.each(faulty)('%s looks as on the committed sheet under every fault that can be seen', async (kind) => {
    const part = partOfKind(kind);
    const sound = drawingOf(materials());
    sound.follow(worldWith(part));
    const whole = boxOf(sound.of(part.id));
    const [first] = visible(kind);
    const box = closeTo(whole, 0.7);
    // Of a span one sees the place at which its first fault would be.
    const place = box === whole || !first ? null : aboutSign({ ...part, faults: [laid(first.id)] });
    const cellOf = (fault: FaultKind): Cell => {
      const made = madeFor(part, fault);
      const bad = { ...made, state: { ...made.state, ...fault.sets }, faults: [laid(fault.id)] };
      const drawing = drawingOf(materials());
      drawing.follow(worldWith(bad));
      const own = drawing.of(part.id);
      const frame = aboutMarks(own) ?? aboutSign(bad) ?? box;
      return {
        name: `fault/${kind}/${fault.id}`,
        objects: [...new Set([...own, ...near(drawing, frame)])],
        box: frame,
      };
    };
    await shootAll(`fault-${kind}`, [
      { name: `fault/${kind}/sound`, objects: [...sound.of(part.id)], box: place ?? box },
      ...visible(kind).map(cellOf),
    ]);
    heldAgainst(`fault/${kind}/`);
  });
});

afterAll(async () => {
  studio.dispose();
  if (!inject('update')) return;
  const sorted = Object.fromEntries(Object.entries(found).sort(([a], [b]) => (a < b ? -1 : 1)));
  await commands.writeFile('tests/scene/hardware/sheet.json', `${JSON.stringify(sorted, null, 1)}\n`);
});
