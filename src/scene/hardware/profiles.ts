/** Profiles of turned bodies from `assets/profiles`, read into metres, softened and ready to turn. */
import type { BufferGeometry } from 'three';
import arrester from '../../../assets/profiles/arrester.json';
import cutoutBody from '../../../assets/profiles/cutout-body.json';
import highVoltageBushing from '../../../assets/profiles/high-voltage-bushing.json';
import lowVoltageBushing from '../../../assets/profiles/low-voltage-bushing.json';
import pinInsulator from '../../../assets/profiles/pin-insulator.json';
import polymerDeadend from '../../../assets/profiles/polymer-deadend.json';
import spool from '../../../assets/profiles/spool.json';
import strainBall from '../../../assets/profiles/strain-ball.json';
import suspensionCap from '../../../assets/profiles/suspension-cap.json';
import suspensionDisc from '../../../assets/profiles/suspension-disc.json';
import tank from '../../../assets/profiles/tank.json';
import tankLid from '../../../assets/profiles/tank-lid.json';
import { type Profile, soften, turned } from './shapes.ts';

interface ProfileFile {
  readonly soften: number;
  readonly segments: number;
  readonly points: readonly (readonly number[])[];
}

const files = {
  arrester,
  cutoutBody,
  highVoltageBushing,
  lowVoltageBushing,
  pinInsulator,
  polymerDeadend,
  spool,
  strainBall,
  suspensionCap,
  suspensionDisc,
  tank,
  tankLid,
} satisfies Record<string, ProfileFile>;

export type ProfileName = keyof typeof files;
export const profileNames = Object.keys(files) as readonly ProfileName[];

/** The softened profile, m; `scale` stretches radius and height. */
export const profileOf = (name: ProfileName, scale: readonly [number, number] = [1, 1]): Profile => {
  const file: ProfileFile = files[name];
  const points = file.points.map(([r = 0, z = 0]) => [(r / 1000) * scale[0], (z / 1000) * scale[1]] as const);
  return soften(points, file.soften);
};

/** The turned body of a profile. */
export const turnedOf = (name: ProfileName, scale: readonly [number, number] = [1, 1]): BufferGeometry =>
  turned(profileOf(name, scale), files[name].segments);

/** The outer part of a profile, from its lowest outer point upward, where marks can be seen. */
export const outerOf = (profile: Profile): Profile => {
  let start = 0;
  profile.forEach((p, i) => {
    const s = profile[start] as readonly [number, number];
    if (p[1] < s[1] - 1e-9 || (Math.abs(p[1] - s[1]) < 1e-9 && p[0] > s[0])) start = i;
  });
  return profile.slice(start);
};
