/** Every act's file by its name. */
import { acknowledge } from './acknowledge.ts';
import { aloft, comeDown } from './aloft.ts';
import { brief } from './brief.ts';
import { clearance } from './clearance.ts';
import { cover } from './cover.ts';
import { closeOut, handOver } from './end.ts';
import { everyoneClear } from './everyoneClear.ts';
import { callFinding, withdrawFinding } from './finding.ts';
import { go } from './go.ts';
import { countGrounds, ground, unground } from './ground.ts';
import { guard } from './guard.ts';
import type { ActKind } from './kind.ts';
import { listen } from './listen.ts';
import { look } from './look.ts';
import { operate } from './operate.ts';
import { order } from './order.ts';
import { owner } from './owner.ts';
import { plan, withdrawPlan } from './plan.ts';
import { repair } from './repair.ts';
import { assign, send } from './send.ts';
import { prod, sound } from './soundPole.ts';
import { support } from './support.ts';
import { tag } from './tag.ts';
import { ask, tell } from './talk.ts';
import { test } from './testPoint.ts';
import { checkTool, wear } from './tools.ts';
import { touch } from './touch.ts';
import { engine, park } from './truck.ts';
import type { ActName } from './types.ts';
import { wait } from './wait.ts';

/** In the order in which acts are offered. */
export const kinds: { readonly [N in ActName]: ActKind<N> } = {
  acknowledge,
  park,
  go,
  engine,
  listen,
  look,
  ask,
  tell,
  guard,
  'check-tool': checkTool,
  wear,
  sound,
  prod,
  test,
  operate,
  owner,
  tag,
  clearance,
  order,
  send,
  assign,
  ground,
  unground,
  'count-grounds': countGrounds,
  aloft,
  'come-down': comeDown,
  support,
  cover,
  repair,
  touch,
  'call-finding': callFinding,
  'withdraw-finding': withdrawFinding,
  plan,
  'withdraw-plan': withdrawPlan,
  brief,
  'everyone-clear': everyoneClear,
  wait,
  'hand-over': handOver,
  'close-out': closeOut,
};

/** The file of an act; the name picks the type, which the compiler cannot follow through the table. */
export const kindOf = <N extends ActName>(name: N): ActKind<N> => kinds[name];
