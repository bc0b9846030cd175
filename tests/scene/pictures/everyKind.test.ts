import type { Mesh } from 'three';
import { describe, expect, it } from 'vitest';
import { componentKinds } from '../../../src/engine/catalogue/components.ts';
import { faultKinds } from '../../../src/engine/catalogue/faults.ts';
import { partForm } from '../../../src/engine/world/partForm.ts';
import type { Part } from '../../../src/engine/world/types.ts';
import { drawingOf } from '../../../src/scene/pictures/drawWorld.ts';
import { laid, partOfKind, worldWith } from '../everyKind.ts';
import { bare } from '../hardware/parts.ts';

/** A number that two pictures of a part, and of the pole that bears it, share only if they are the same. */
const drawing = drawingOf(bare);
const faceOf = (part: Part): string => {
  drawing.follow(worldWith(part));
  const sums: string[] = [];
  for (const group of [part.id, `${part.pole}.pole`].flatMap((id) => drawing.of(id))) {
    group.traverse((o) => {
      const mesh = o as Mesh;
      const p = mesh.geometry?.getAttribute('position');
      if (!p) return;
      let sum = 0;
      for (let i = 0; i < p.count; i += 3) sum += p.getX(i) * 3 + p.getY(i) * 5 + p.getZ(i) * 7;
      sums.push(`${mesh.name} ${p.count} ${sum.toFixed(3)}`);
    });
  }
  return sums.join(' ');
};

/** Kinds whose looks say nothing (a source, a coupling) are not drawn. */
const drawn = componentKinds.filter(({ features }) => features.length > 0).map(({ id }) => id);
/** An inverter that holds up a dead line looks on its wall as one that follows a live one. */
const asUsual = ['inverter-holds-alone'];
const unseen = ['house-ground', 'household-load'];

describe.each(drawn.filter((kind) => !unseen.includes(kind)))('%s', (kind) => {
  const there = partOfKind(kind);
  const part = { ...there, state: partForm({ id: there.id, kind, owner: null, where: '', at: there.at }).state };
  const sound = faceOf(part);

  it('is drawn', () => {
    expect(sound).not.toBe('');
    expect(sound).not.toContain('NaN');
  });

  const faults = faultKinds.filter((fault) => fault.on.includes(kind));
  const seen = faults
    .filter(({ id }) => !asUsual.includes(id))
    .filter(({ signs }) => signs.some(({ sense }) => sense === 'see'));
  const blind = faults.filter(({ signs, sets }) => !signs.some(({ sense }) => sense === 'see') && sets === undefined);
  if (seen.length > 0)
    it.each(seen.map(({ id }) => id))('looks otherwise with %s', (id) => {
      const state = { ...part.state, ...faultKinds.find((fault) => fault.id === id)?.sets };
      expect(faceOf({ ...part, state, faults: [laid(id)] })).not.toBe(sound);
    });
  if (blind.length > 0)
    it.each(blind.map(({ id }) => id))('looks the same with %s, which nobody can see', (id) => {
      expect(faceOf({ ...part, faults: [laid(id)] })).toBe(sound);
    });
});
