/** Every kind of part that can be drawn, by the engine's name of its component. */
import { arrester } from './arrester.ts';
import { panel, transferSwitch } from './boxes.ts';
import { house, outbuilding } from './buildings.ts';
import { crossarm } from './crossarm.ts';
import { cutout } from './cutout.ts';
import { deadend } from './deadend.ts';
import { generator } from './generator.ts';
import { guy } from './guy.ts';
import { hotLineClamp } from './hotLineClamp.ts';
import { lead } from './lead.ts';
import { meter } from './meter.ts';
import { person } from './person.ts';
import { pinInsulator } from './pinInsulator.ts';
import { pole } from './pole.ts';
import { poleGround } from './poleGround.ts';
import { barrierTape, cone, groundSet, post, sign, tag, wheelChock } from './safety.ts';
import { serviceMast } from './serviceMast.ts';
import { neutralSpool, secondaryClevis } from './spool.ts';
import { streetlight } from './streetlight.ts';
import { tie } from './tie.ts';
import { transformer } from './transformer.ts';
import { tree } from './tree.ts';
import { triplex, wedgeClamp } from './triplex.ts';
import { truck } from './truck.ts';
import type { Builder } from './types.ts';

const builders: readonly Builder[] = [
  arrester,
  barrierTape,
  cone,
  crossarm,
  cutout,
  deadend,
  generator,
  groundSet,
  guy,
  hotLineClamp,
  house,
  lead,
  meter,
  neutralSpool,
  outbuilding,
  panel,
  person,
  pinInsulator,
  pole,
  poleGround,
  post,
  secondaryClevis,
  serviceMast,
  sign,
  streetlight,
  tag,
  tie,
  transferSwitch,
  transformer,
  tree,
  triplex,
  truck,
  wedgeClamp,
  wheelChock,
];

/** Builder of each kind: `hardware[spec.kind](spec, materials())`. */
export const hardware: Readonly<Record<string, Builder>> = Object.fromEntries(builders.map((b) => [b.kind, b]));
