/** Profiles of turned bodies from `assets/profiles`, read into metres, softened and ready to turn. */
import type { BufferGeometry } from 'three';
import arrester from '../../../assets/profiles/arrester.json';
import arresterPorcelain from '../../../assets/profiles/arrester-porcelain.json';
import canLid from '../../../assets/profiles/can-lid.json';
import capacitorBushing from '../../../assets/profiles/capacitor-bushing.json';
import cutoutBody from '../../../assets/profiles/cutout-body.json';
import cutoutPolymer from '../../../assets/profiles/cutout-polymer.json';
import glassDisc from '../../../assets/profiles/glass-disc.json';
import highVoltageBushing from '../../../assets/profiles/high-voltage-bushing.json';
import lowVoltageBushing from '../../../assets/profiles/low-voltage-bushing.json';
import pinInsulator from '../../../assets/profiles/pin-insulator.json';
import polymerDeadend from '../../../assets/profiles/polymer-deadend.json';
import postPolymer from '../../../assets/profiles/post-polymer.json';
import postPorcelain from '../../../assets/profiles/post-porcelain.json';
import recloserBushing from '../../../assets/profiles/recloser-bushing.json';
import regulatorTank from '../../../assets/profiles/regulator-tank.json';
import spool from '../../../assets/profiles/spool.json';
import strainBall from '../../../assets/profiles/strain-ball.json';
import suspensionCap from '../../../assets/profiles/suspension-cap.json';
import suspensionDisc from '../../../assets/profiles/suspension-disc.json';
import switchPost from '../../../assets/profiles/switch-post.json';
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
  arresterPorcelain,
  canLid,
  capacitorBushing,
  cutoutBody,
  cutoutPolymer,
  glassDisc,
  highVoltageBushing,
  lowVoltageBushing,
  pinInsulator,
  polymerDeadend,
  postPolymer,
  postPorcelain,
  recloserBushing,
  regulatorTank,
  spool,
  strainBall,
  suspensionCap,
  suspensionDisc,
  switchPost,
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

/** The turned body of a profile; fewer `segments` for what is small and many. */
export const turnedOf = (
  name: ProfileName,
  scale: readonly [number, number] = [1, 1],
  segments: number = files[name].segments,
): BufferGeometry => turned(profileOf(name, scale), segments);

/** The outer part of a profile, from its lowest outer point upward, where marks can be seen. */
export const outerOf = (profile: Profile): Profile => {
  let start = 0;
  profile.forEach((p, i) => {
    const s = profile[start] as readonly [number, number];
    if (p[1] < s[1] - 1e-9 || (Math.abs(p[1] - s[1]) < 1e-9 && p[0] > s[0])) start = i;
  });
  return profile.slice(start);
};
