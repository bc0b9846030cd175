/**
 * Backdrop of the line: where a pole of the scene carries a conductor across, the main line goes on both ways into the fog, on
 * poles that no act reaches and no name is given to.
 */
import type { Group, Mesh } from 'three';
import type { Part, World } from '../../engine/world/types.ts';
import { hardware } from '../hardware/registry.ts';
import type { PartSpec, Point } from '../hardware/types.ts';
import type { Materials } from '../materials/materials.ts';
import { buildPiece } from '../pictures/buildPiece.ts';
import { spanOf } from '../pictures/shared.ts';
import { conductor, poleForm } from '../pictures/support.ts';

const SPAN = 58;
const FAR = 3;

/** Poles of the scene whose conductor runs across the tap's direction. */
const crossings = (world: World): readonly { readonly pole: Part; readonly azimuth: number }[] =>
  world.parts.flatMap((part) => {
    const tie = world.parts.find(({ id }) => id === `${part.pole}.tie`);
    return part.id === `${part.pole}.pole` && tie && Math.abs(Math.cos(tie.azimuth)) < 0.5
      ? [{ pole: part, azimuth: tie.azimuth }]
      : [];
  });

/** Builds poles, insulators and conductors of the main line beyond the scene into a group, a pole at a time. */
export const beyondSteps = function* (world: World, set: Materials, group: Group): Generator<void> {
  const place = (spec: PartSpec, at: Point): void => {
    const made = hardware[spec.kind]?.(spec, set);
    if (!made) throw new Error(`nothing draws ${spec.kind}`);
    made.position.set(...at);
    group.add(made);
  };
  for (const { pole, azimuth } of crossings(world)) {
    const size = poleForm(pole);
    const h = size.height;
    const at = (k: number): Point => [
      pole.at[0] + k * SPAN * Math.cos(azimuth),
      pole.at[1] + k * SPAN * Math.sin(azimuth),
      0,
    ];
    const up = (p: Point, z: number, across = 0): Point => [
      p[0] + across * Math.sin(azimuth),
      p[1] - across * Math.cos(azimuth),
      z,
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
