/**
 * Backdrop of the line, on poles that no act reaches and no name is given to: where a pole of the scene carries a conductor across,
 * the main line goes on both ways; where the scene's own line leaves it, that goes on, carried as on the scene's last pole.
 */
import type { Group, Mesh } from 'three';
import type { Part, World } from '../../engine/world/types.ts';
import { hardware } from '../hardware/registry.ts';
import type { PartSpec, Point } from '../hardware/types.ts';
import type { Materials } from '../materials/materials.ts';
import { buildPiece } from '../pictures/buildPiece.ts';
import { drawingOf } from '../pictures/drawWorld.ts';
import { spanOf } from '../pictures/shared.ts';
import { conductor, poleForm } from '../pictures/support.ts';
import { groundAt } from './lie.ts';
import { type Through, throughIn } from './through.ts';

const SPAN = 58;
const FAR = 3;
/** Poles of the scene's own line on its way out: into the haze of a clear day. */
const OUT = 5;

/** Poles of the scene whose conductor runs across the tap's direction. */
const crossings = (world: World): readonly { readonly pole: Part; readonly azimuth: number }[] =>
  world.parts.flatMap((part) => {
    const tie = world.parts.find(({ id }) => id === `${part.pole}.tie`);
    return part.id === `${part.pole}.pole` && tie && Math.abs(Math.cos(tie.azimuth)) < 0.5
      ? [{ pole: part, azimuth: tie.azimuth }]
      : [];
  });

/** A line that goes on, a pole at a time: what carries it is drawn as the scene's is, sound and further out. */
const goOn = function* (world: World, line: Through, set: Materials, group: Group): Generator<void> {
  const { pole, azimuth, span, wires, carried } = line;
  const step = (k: number): Point => {
    const [x, y] = [k * span * Math.cos(azimuth), k * span * Math.sin(azimuth)];
    return [x, y, k === 0 ? 0 : groundAt(pole.at[0] + x, pole.at[1] + y)];
  };
  const drawing = drawingOf(set);
  for (let k = 1; k <= OUT; k++) {
    const [x, y, z] = step(k);
    const moved = [pole, ...carried].map((part): Part => {
      const id = part.id.replace(/^[^.]*/, `beyond${k}`);
      return { ...part, id, pole: `beyond${k}`, at: [part.at[0] + x, part.at[1] + y, part.at[2]], faults: [] };
    });
    for (const _ of drawing.steps({ ...world, parts: moved })) yield;
    for (const one of moved.flatMap(({ id }) => drawing.of(id))) {
      one.position.z += z;
      one.updateMatrix();
      group.add(one);
    }
    const [fromX, fromY, fromZ] = step(k - 1);
    for (const { at, sag } of wires) {
      const a: Point = [at[0] + fromX, at[1] + fromY, at[2] + fromZ];
      group.add(buildPiece(spanOf('aluminium', conductor, a, [at[0] + x, at[1] + y, at[2] + z], sag), set));
    }
    yield;
  }
};

/** Builds poles, insulators and conductors of the line beyond the scene into a group, a pole at a time. */
export const beyondSteps = function* (world: World, set: Materials, group: Group): Generator<void> {
  for (const line of throughIn(world)) yield* goOn(world, line, set, group);
  const place = (spec: PartSpec, at: Point): void => {
    const made = hardware[spec.kind]?.(spec, set);
    if (!made) throw new Error(`nothing draws ${spec.kind}`);
    made.position.set(...at);
    group.add(made);
  };
  for (const { pole, azimuth } of crossings(world)) {
    const size = poleForm(pole);
    const h = size.height;
    const at = (k: number): Point => {
      const [x, y] = [pole.at[0] + k * SPAN * Math.cos(azimuth), pole.at[1] + k * SPAN * Math.sin(azimuth)];
      return [x, y, k === 0 ? 0 : groundAt(x, y)];
    };
    const up = (p: Point, z: number, across = 0): Point => [
      p[0] + across * Math.sin(azimuth),
      p[1] - across * Math.cos(azimuth),
      p[2] + z,
    ];
    for (let k = -FAR; k <= FAR; k++) {
      yield;
      const foot = at(k);
      if (k !== 0) {
        place({ kind: 'pole', size, seed: 60 + k }, foot);
        place(
          { kind: 'pin-insulator', side: azimuth + Math.PI / 2, size: { poleDiameter: size.topDiameter } },
          up(foot, h),
        );
        place({ kind: 'tie', variant: 'preformed', side: azimuth, size: { conductor } }, up(foot, h + 0.3));
      }
      if (k === FAR) continue;
      group.add(buildPiece(spanOf('aluminium', conductor, up(foot, h + 0.3), up(at(k + 1), h + 0.3), 0.75), set));
      group.add(
        buildPiece(spanOf('aluminium', conductor, up(foot, h - 1.6, 0.2), up(at(k + 1), h - 1.6, 0.2), 0.75), set),
      );
    }
  }
};

/** Frees what `beyondOf` built. */
export const releaseBeyond = (group: Group): void => {
  group.traverse((o) => {
    (o as Mesh).geometry?.dispose();
  });
};
