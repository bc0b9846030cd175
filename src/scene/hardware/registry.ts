/** Every kind of part that can be drawn, by the engine's name of its component. */
import { arrester } from './arrester.ts';
import { birdGuard } from './birdGuard.ts';
import { panel, transferSwitch } from './boxes.ts';
import { house, outbuilding } from './buildings.ts';
import { capacitor } from './capacitor.ts';
import { car } from './car.ts';
import { splitBolt, squeezeConnector } from './connectors.ts';
import { crossarm } from './crossarm.ts';
import { cutout } from './cutout.ts';
import { deadend, deadendShoe } from './deadend.ts';
import { disconnect } from './disconnect.ts';
import { dog } from './dog.ts';
import { generator } from './generator.ts';
import { guy } from './guy.ts';
import { anchor, guyGuard, strainInsulator } from './guyParts.ts';
import { hotLineClamp, stirrup } from './hotLineClamp.ts';
import { lead } from './lead.ts';
import { limb } from './limb.ts';
import { meter } from './meter.ts';
import { moulding } from './moulding.ts';
import { person } from './person.ts';
import { pinInsulator, ridgePin } from './pinInsulator.ts';
import { batteryCabinet, inverter, solarPanels } from './plants.ts';
import { pole } from './pole.ts';
import { poleGround } from './poleGround.ts';
import { postInsulator } from './postInsulator.ts';
import { recloser } from './recloser.ts';
import { regulator } from './regulator.ts';
import { barrierTape, cone, groundSet, post, sign, tag, wheelChock } from './safety.ts';
import { secondaryRack } from './secondaryRack.ts';
import { serviceMast } from './serviceMast.ts';
import { shop } from './shop.ts';
import { neutralSpool, secondaryClevis } from './spool.ts';
import { streetlight } from './streetlight.ts';
import { suspension, suspensionClamp } from './suspension.ts';
import { strandClamp, telecomCable, telecomEnclosure } from './telecom.ts';
import { tie } from './tie.ts';
import { transformer } from './transformer.ts';
import { tree } from './tree.ts';
import { triplex, wedgeClamp } from './triplex.ts';
import { truck } from './truck.ts';
import type { Builder } from './types.ts';

const builders: readonly Builder[] = [
  anchor,
  arrester,
  barrierTape,
  batteryCabinet,
  birdGuard,
  capacitor,
  car,
  cone,
  crossarm,
  cutout,
  deadend,
  deadendShoe,
  disconnect,
  dog,
  generator,
  groundSet,
  guy,
  guyGuard,
  hotLineClamp,
  house,
  inverter,
  lead,
  limb,
  meter,
  moulding,
  neutralSpool,
  outbuilding,
  panel,
  person,
  pinInsulator,
  pole,
  poleGround,
  post,
  postInsulator,
  recloser,
  regulator,
  ridgePin,
  secondaryClevis,
  secondaryRack,
  serviceMast,
  shop,
  sign,
  solarPanels,
  splitBolt,
  squeezeConnector,
  stirrup,
  strainInsulator,
  strandClamp,
  streetlight,
  suspension,
  suspensionClamp,
  tag,
  telecomCable,
  telecomEnclosure,
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
